/** How a face goes through an opening: square to it, or turned in its plane. */
export type Through = 'square' | 'turned';

/**
 * Least width of an opening of length `a` that a face `p` by `q` (p > a, p >= q) goes through turned in the opening's
 * plane, m; infinite beyond the diagonal that could ever do. Source: `access.rectangle`.
 */
export function widthForTurned(p: number, q: number, a: number): number {
  const square = p * p + q * q;
  if (square <= a * a) return q;
  return (2 * p * q * a + (p * p - q * q) * Math.sqrt(square - a * a)) / square;
}

/** The same condition in its symmetrical form: at least 2 where the face goes through turned. */
export const symmetrical = (p: number, q: number, a: number, b: number): number =>
  ((a + b) / (p + q)) ** 2 + ((a - b) / (p - q)) ** 2;

/**
 * m to spare for a face in an opening, its better way, and the way it takes; below 0 where it takes neither. At p = a the
 * spare jumps: a face that is a hair too long for the opening has to be turned, and needs far more width.
 */
export function faceSpare(
  face: readonly [number, number],
  opening: readonly [number, number],
): { readonly spare: number; readonly through: Through } {
  const [p, q] = [Math.max(...face), Math.min(...face)];
  const [a, b] = [Math.max(...opening), Math.min(...opening)];
  const square = Math.min(a - p, b - q);
  if (p <= a || q > b) return { spare: square, through: 'square' };
  const turned = b - widthForTurned(p, q, a);
  return turned > square ? { spare: turned, through: 'turned' } : { spare: square, through: 'square' };
}

/** The widest face of length `p` that goes through an opening `a` by `b` (a >= b), m; 0 beyond its diagonal. */
export function widestFor(p: number, a: number, b: number): number {
  if (p <= a) return Math.min(b, p);
  if (p * p >= a * a + b * b) return 0;
  let [low, high] = [0, b];
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (widthForTurned(p, middle, a) <= b) low = middle;
    else high = middle;
  }
  return low;
}
