import type { Spot } from './ductFacts.ts';
import type { Rect } from './labels.ts';

/** A straight piece of a way, from one spot to the next. */
export type Stretch = readonly [Spot, Spot];

export const stretchesOf = (way: readonly Spot[]): Stretch[] => way.slice(1).map((to, i) => [way[i] ?? to, to]);
export const lengthOf = ([a, b]: Stretch): number => Math.hypot(b[0] - a[0], b[1] - a[1]);
export const between = (a: Spot, b: Spot, t: number): Spot => [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t];

/** The longest stretch, the first of equals. A way that runs straight up has none: then it is a point. */
export function longestOf(way: readonly Spot[]): Stretch {
  const only = way[0] ?? [0, 0];
  return stretchesOf(way).reduce<Stretch>((best, s) => (lengthOf(s) > lengthOf(best) + 1e-9 ? s : best), [only, only]);
}

export const squareAt = ([x, y]: Spot, half: number): Rect => ({
  x: x - half,
  y: y - half,
  width: 2 * half,
  height: 2 * half,
});
export const middleOf = (r: Rect): Spot => [r.x + r.width / 2, r.y + r.height / 2];

export const meets = (a: Rect, b: Rect): boolean =>
  a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;
