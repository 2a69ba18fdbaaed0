import type { Space } from './asked.ts';
import { outerSize } from './geometry.ts';
import type { BrokenLimit } from './spec.ts';
import type { DuctShape } from './stock.ts';

/** Limits are compared to a micrometre and a micrometre a second: none hangs on the last bit. */
const slightly = 1e-6;

export const over = (limit: BrokenLimit['limit'], value: number, most: number | undefined): BrokenLimit[] =>
  most !== undefined && value > most + slightly ? [{ limit, value, most }] : [];

/** How a duct goes into its space, and which sides of the space it breaks. */
type Passing = { readonly breaks: readonly BrokenLimit[]; readonly onEdge?: true };

/** A duct with its insulation (m²K/W) in its space: lying flat, or on edge where only that goes in. Sizes in m. */
export function passing(shape: DuctShape, insulation: number, space: Space): Passing {
  const { depth, width } = outerSize(shape, insulation);
  const sides = (d: number, w: number) => [...over('depth', d, space.depth), ...over('width', w, space.width)];
  const flat = sides(depth, width);
  if (flat.length === 0 || 'diameter' in shape || space.depth === undefined || space.width === undefined)
    return { breaks: flat };
  const edge = sides(width, depth);
  return edge.length === 0 ? { breaks: edge, onEdge: true } : { breaks: flat };
}
