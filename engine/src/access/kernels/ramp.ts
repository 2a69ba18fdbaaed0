import { advantage, gravity, type Tackle } from './rope.ts';

const radians = (degrees: number): number => (degrees * Math.PI) / 180;

/** What is drawn up a ramp: kg, degrees from the level, friction as a share of what presses on it. */
export type Ramp = { readonly mass: number; readonly slope: number; readonly friction: number };

/** N along the ramp to draw it up, steadily. Straight up, at 90°, it is the weight alone. Source: `access.ramp`. */
export const drawUp = ({ mass, slope, friction }: Ramp): number =>
  mass * gravity * (Math.sin(radians(slope)) + friction * Math.cos(radians(slope)));

/** N along the ramp that keep it from sliding back; 0 where friction holds it. Source: `access.ramp`. */
export const holdBack = ({ mass, slope, friction }: Ramp): number =>
  Math.max(0, mass * gravity * (Math.sin(radians(slope)) - friction * Math.cos(radians(slope))));

/** A force by its size, N, and degrees aside from the load's own pull. */
export type Leaning = { readonly force: number; readonly aside: number };

/** What an anchor holds that a load pulls straight and whose rope's end is pulled `aside` degrees from that. Source: `access.rope`. */
export function anchorPull(load: number, pull: number, aside: number): Leaning {
  const [along, across] = [load + pull * Math.cos(radians(aside)), pull * Math.sin(radians(aside))];
  return { force: Math.hypot(along, across), aside: (Math.atan2(across, along) * 180) / Math.PI };
}

/** N at the rope's end, and on the anchor with the pull beside the load, for a load drawn by a tackle up a ramp. */
export function rampHoist(ramp: Ramp, tackle: Tackle): { readonly pull: number; readonly anchor: number } {
  const along = drawUp(ramp);
  const pull = along / advantage(tackle);
  return { pull, anchor: along + pull };
}

/**
 * Share of a box that the lower of two carriers holds on a stair of `slope` degrees, each at one end of its underside
 * `length` m apart, its middle `height` m above that. Beyond 1 it tips over the lower one. Source: `access.stair`.
 */
export const lowerShare = (length: number, height: number, slope: number): number =>
  0.5 + (height / length) * Math.tan(radians(slope));
