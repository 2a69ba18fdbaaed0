import type { Looked } from './table.ts';
import { butterfly } from './tables.ts';

/** Loss coefficient of a round butterfly damper that stands open, and of one turned as far as the table goes. */
export const bladeLosses = { open: butterfly.points[0]?.[1] ?? 0, most: butterfly.points.at(-1)?.[1] ?? 0 } as const;

/**
 * How far a round butterfly damper has to be turned from open, degrees, to lose so many velocity pressures of its duct:
 * the table read backwards between its points by straight lines. Outside its ends it says so. Source: `flow.fittings`.
 */
export function bladeAngle(loss: number): Looked {
  const { points } = butterfly;
  const { open: from, most: to } = bladeLosses;
  const upper = points.findIndex(([, c]) => c >= loss);
  if (!(loss >= from) || upper < 0) return { ok: false, input: 'loss coefficient', found: loss, from, to };
  const [x1, y1] = points[upper] ?? [0, 0];
  const [x0, y0] = points[Math.max(0, upper - 1)] ?? [0, 0];
  return { ok: true, value: y1 === y0 ? x1 : x0 + ((x1 - x0) * (loss - y0)) / (y1 - y0) };
}
