/** Longest thin rod that goes level round a square corner between corridors `a` and `b` wide, m. Source: `access.corner`. */
export const longestRod = (a: number, b: number): number => (a ** (2 / 3) + b ** (2 / 3)) ** 1.5;

/** The longest piece of a width that turns round the corner, and how far it is turned where it is tightest, degrees. */
export type Turn = { readonly length: number; readonly angle: number };

const golden = (Math.sqrt(5) - 1) / 2;

/**
 * Longest rectangle, `width` m wide, that turns round a square corner between corridors `a` and `b` wide, m: the least over
 * the angle of (a cos t + b sin t - w)/(sin t cos t), which has one valley while the piece is narrower than both. No length
 * where it is as wide as a corridor. Source: `access.corner`.
 */
export function longestTurning(a: number, b: number, width: number): Turn {
  if (!(width < Math.min(a, b))) return { length: 0, angle: 0 };
  const room = (t: number): number => (a * Math.cos(t) + b * Math.sin(t) - width) / (Math.sin(t) * Math.cos(t));
  let [low, high] = [1e-6, Math.PI / 2 - 1e-6];
  let [left, right] = [high - golden * (high - low), low + golden * (high - low)];
  for (let i = 0; i < 80; i++) {
    if (room(left) < room(right)) [high, right, left] = [right, left, right - golden * (right - low)];
    else [low, left, right] = [left, right, left + golden * (high - left)];
  }
  const t = (low + high) / 2;
  return { length: room(t), angle: (t * 180) / Math.PI };
}

/**
 * m to spare for a piece `length` by `width` (in plan) at the corner: it slides through sideways without turning, or turns.
 * Below 0 where it does neither.
 */
export function cornerSpare(a: number, b: number, length: number, width: number): number {
  const slides = Math.max(Math.min(b - length, a - width), Math.min(a - length, b - width));
  const aside = Math.min(a, b) - width;
  return Math.max(slides, Math.min(aside, longestTurning(a, b, width).length - length));
}
