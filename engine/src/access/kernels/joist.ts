/** Second moment, m⁴, and section modulus, m³, of an upright joist. Source: `access.beam`. */
export const inertia = (width: number, depth: number): number => (width * depth ** 3) / 12;
export const modulus = (width: number, depth: number): number => (width * depth * depth) / 6;

/** A joist on two supports: m, Pa. */
export type Joist = { readonly width: number; readonly depth: number; readonly span: number; readonly elastic: number };
/** What it carries: N/m along it, and N at `at` m from one end (its middle without it). */
export type Load = { readonly spread: number; readonly point: number; readonly at?: number };

/** Largest bending moment, N m, of both together; that of the point's place and of the middle, whichever is more. Source: `access.beam`. */
export function moment(span: number, { spread, point, at = span / 2 }: Load): number {
  // Shear falls by `spread` along the joist and jumps at the point: the moment is largest where it passes zero.
  const held = (spread * span) / 2 + (point * (span - at)) / span;
  const x = spread > 0 ? Math.min(at, held / spread) : at;
  const after = spread > 0 ? Math.min(span, Math.max(at, (held - point) / spread)) : at;
  const momentAt = (y: number): number => held * y - (spread * y * y) / 2 - (y > at ? point * (y - at) : 0);
  return Math.max(momentAt(x), momentAt(after));
}

/** Pa at the edge. */
export const stress = (bending: number, { width, depth }: Pick<Joist, 'width' | 'depth'>): number =>
  bending / modulus(width, depth);

/** m of sag from the spread load, at its middle. */
export const sagSpread = (spread: number, { width, depth, span, elastic }: Joist): number =>
  (5 * spread * span ** 4) / (384 * elastic * inertia(width, depth));

/** m of largest sag from a point load anywhere on it, by the classic formula. Source: `access.beam`. */
export function sagPoint(point: number, { width, depth, span, elastic }: Joist, at = span / 2): number {
  const short = Math.min(at, span - at);
  const stiff = elastic * inertia(width, depth);
  return (point * short * (span * span - short * short) ** 1.5) / (9 * Math.sqrt(3) * span * stiff);
}

/** m of sag of both together; the sum of the two largest, which is never too little. */
export const sag = (load: Load, joist: Joist): number =>
  sagSpread(load.spread, joist) + sagPoint(load.point, joist, load.at);

/** What span tables are computed from: loads in Pa, spacing m, allowed bending stress Pa, span over sag. */
export type TableCase = {
  readonly live: number;
  readonly dead: number;
  readonly spacing: number;
  readonly elastic: number;
  readonly bending: number;
  readonly sagShare: number;
};

/** The longest span, m, that bending under all of it and sag under the live part allow. Source: `access.spans`. */
export function longestSpan(width: number, depth: number, of: TableCase): number {
  const byBending = Math.sqrt((8 * of.bending * modulus(width, depth)) / ((of.live + of.dead) * of.spacing));
  const bySag = Math.cbrt((384 * of.elastic * inertia(width, depth)) / (5 * of.live * of.spacing * of.sagShare));
  return Math.min(byBending, bySag);
}
