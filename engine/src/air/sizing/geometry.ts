import { hydraulicDiameter } from '../../physics/flow/index.ts';
import type { DuctShape } from './stock.ts';

/** W/(m K) of the wrap round ducts: R-8 is 57 mm thick with it. Source: `air.sizing-wrap` (common practice). */
const wrapConductivity = 0.0406;

/** Inner cross-section m², hydraulic diameter m, inner perimeter m. */
export type DuctGeometry = { readonly area: number; readonly diameter: number; readonly perimeter: number };

export function geometryOf(shape: DuctShape): DuctGeometry {
  if ('diameter' in shape) {
    const { diameter: d } = shape;
    return { area: (Math.PI * d * d) / 4, diameter: d, perimeter: Math.PI * d };
  }
  const { width: w, height: h } = shape;
  return { area: w * h, diameter: hydraulicDiameter(w, h), perimeter: 2 * (w + h) };
}

/** Outer height and width, m, with the insulation (m²K/W) round it; board is its own insulation, of the same thickness. */
export function outerSize(shape: DuctShape, insulation: number): { readonly depth: number; readonly width: number } {
  const around = 2 * insulation * wrapConductivity;
  return 'diameter' in shape
    ? { depth: shape.diameter + around, width: shape.diameter + around }
    : { depth: shape.height + around, width: shape.width + around };
}
