/** One input of a published table: points in rising order, each with its loss coefficient. */
export type LossTable = {
  readonly id: string;
  /** What the coefficient is read by: `radius over diameter`. */
  readonly input: string;
  readonly points: readonly (readonly [number, number])[];
  /** The velocity that the coefficient belongs to: `duct`, `small duct`, `common duct`, `face`. */
  readonly at: string;
  readonly source: string;
};

/** A coefficient, or how far an input lies outside its table: nothing is carried on beyond the ends. */
export type Looked =
  | { readonly ok: true; readonly value: number }
  | { readonly ok: false; readonly input: string; readonly found: number; readonly from: number; readonly to: number };

/**
 * Reads a table between its points by straight lines, which keeps whatever falls falling. Outside its ends, and for
 * anything that is not a number, it says so instead.
 */
export function lookUp(table: LossTable, x: number): Looked {
  const { points, input } = table;
  const [from, to] = [points[0]?.[0] ?? 0, points.at(-1)?.[0] ?? 0];
  const upper = points.findIndex(([at]) => at >= x);
  if (!(x >= from) || upper < 0) return { ok: false, input, found: x, from, to };
  const [x1, y1] = points[upper] ?? [0, 0];
  const [x0, y0] = points[Math.max(0, upper - 1)] ?? [0, 0];
  return { ok: true, value: x === x1 ? y1 : y0 + ((y1 - y0) * (x - x0)) / (x1 - x0) };
}

/** A value worked out from one that was looked up. */
export const derived = (looked: Looked, use: (value: number) => number): Looked =>
  looked.ok ? { ok: true, value: use(looked.value) } : looked;
