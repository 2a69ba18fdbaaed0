import type { TransitionEnd } from '../../cutting/metal/transition.ts';
import { leans } from '../../cutting/transition/leans.ts';
import type { TransitionSide } from '../../cutting/transition/sidesFlat.ts';
import { suddenContraction, suddenExpansion } from './openings.ts';
import { lookUp } from './table.ts';
import { mitreByAngle } from './tables.ts';

/** A piece between two ends, the way the air goes; m. The middle of `to` lies `offset` aside of that of `from`. */
export type AirTransition = {
  readonly from: TransitionEnd;
  readonly to: TransitionEnd;
  readonly length: number;
  readonly offset: readonly [right: number, up: number];
};

/** Its loss coefficients, all on the velocity in `area`, m²: what both ends have in common when one is laid on the other. */
export type TransitionLoss = {
  readonly area: number;
  readonly narrowing: number;
  readonly widening: number;
  /** Of the two turns of a piece that leads off to a side. */
  readonly turning: number;
  readonly friction: number;
  /** All of them together. */
  readonly loss: number;
};

/** Darcy's factor of smooth sheet and faced board at the speeds of a house's ducts; the handbook's own for short pieces. */
const darcy = 0.02;

/**
 * What a piece between two ends loses: first narrowed to what both have in common, then widened from there, each by its area
 * and the steepest of its sides counted twice, and turned twice where it leads aside. A rectangle that grows one way and
 * shrinks the other is thereby taken for worse than it is. A length of 0 gives the sudden change. Source: `flow.transition`.
 */
export function transitionLoss({ from, to, length, offset }: AirTransition): TransitionLoss {
  const [before, after, area] = [areaOf(from), areaOf(to), commonArea(from, to)];
  const sides = leans({ start: from, end: to, length, offset });
  const growth = [widthOf(to) - widthOf(from), heightOf(to) - heightOf(from)] as const;
  const steepest = (way: 1 | -1, large: number): number => {
    const own = sides.filter(({ side }) => way * growth[isUpright[side]] > 0).map(({ outward }) => way * outward);
    // Of an end that fits the other and is round, only the corners change: as a square piece of the same areas.
    return 2 * Math.max(0, degrees(Math.atan2((Math.sqrt(large) - Math.sqrt(area)) / 2, length)), ...own);
  };
  const narrowing = suddenContraction(Math.min(1, area / before)) * narrowingShare(steepest(-1, before));
  const widening = suddenExpansion(Math.min(1, area / after)) * wideningShare(steepest(1, after));
  const turn = lookUp(mitreByAngle, degrees(Math.atan2(Math.hypot(...offset), length)));
  const turning = turn.ok ? 2 * turn.value : Number.NaN;
  const friction = (darcy * length) / Math.sqrt(area);
  return { area, narrowing, widening, turning, friction, loss: narrowing + widening + turning + friction };
}

/** Of a sudden narrowing's loss, by the angle between both sides, degrees 0 to 180. Source: `flow.transition` (diagram 5-23). */
export function narrowingShare(angle: number): number {
  const a = (angle * Math.PI) / 180;
  return (10 * a + 2 * Math.PI * a ** 2 - a ** 3) / (10 * Math.PI + Math.PI ** 3);
}

/**
 * Of a sudden widening's loss, by the angle between both sides, degrees 0 to 180: the cone's 3.2 tan(angle / 2)^1.25 times what a
 * pyramid takes more, no more than all of it. The two forms of that factor are joined where they meet, near 17.6°, and the
 * last value published, at 30°, is kept beyond. Source: `flow.transition` (5-5).
 */
export function wideningShare(angle: number): number {
  const pyramid = Math.min(0.66 + 0.12 * angle, 3.3 - 0.03 * Math.min(angle, 30));
  return Math.min(1, 3.2 * pyramid * Math.tan((angle * Math.PI) / 360) ** 1.25);
}

const degrees = (radians: number): number => (radians * 180) / Math.PI;
const isUpright: Readonly<Record<TransitionSide, 0 | 1>> = { top: 1, bottom: 1, left: 0, right: 0 };
const widthOf = (end: TransitionEnd): number => (end.kind === 'round' ? end.diameter : end.width);
const heightOf = (end: TransitionEnd): number => (end.kind === 'round' ? end.diameter : end.height);
const areaOf = (end: TransitionEnd): number =>
  end.kind === 'round' ? (Math.PI * end.diameter ** 2) / 4 : end.width * end.height;

/** m² in which two ends overlap, their middles on each other. */
function commonArea(a: TransitionEnd, b: TransitionEnd): number {
  const [w, h] = [Math.min(widthOf(a), widthOf(b)), Math.min(heightOf(a), heightOf(b))];
  const rounds = [a, b].flatMap((end) => (end.kind === 'round' ? [end.diameter / 2] : []));
  if (rounds.length === 0) return w * h;
  return 4 * underArc(Math.min(...rounds), w / 2, h / 2);
}

/** A quarter of a circle of radius `r`, cut off beyond x and above y. */
function underArc(r: number, x: number, y: number): number {
  const level = Math.min(x, Math.sqrt(Math.max(0, r * r - y * y)));
  const under = (at: number): number => (at * Math.sqrt(Math.max(0, r * r - at * at)) + r * r * Math.asin(at / r)) / 2;
  return level * Math.min(y, r) + under(Math.min(x, r)) - under(level);
}
