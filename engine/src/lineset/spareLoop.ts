import type { Loop } from './result.ts';

/** Turns of a loop at the most: more lie on each other. Source: `lineset.loop`. */
const turnsMost = 3;

/**
 * How `spare` m of line lie as one flat round loop in a place whose narrower side is `room` m (unknown: one turn): as few
 * turns as fit, none tighter than `radius` m. `wide` m across the line. 0 turns where there is too little for one, which
 * then lies as a gentle bow. Source: `lineset.loop`.
 */
export function spareLoop(spare: number, radius: number, wide: number, room?: number): Loop {
  const full = 2 * Math.PI * radius;
  if (spare < full) return { length: Math.max(0, spare), turns: 0, across: 0 };
  const largest = Math.min(turnsMost, Math.floor(spare / full + 1e-9));
  const acrossOf = (turns: number): number => spare / (turns * Math.PI) + wide;
  let turns = 1;
  while (room !== undefined && turns < largest && acrossOf(turns) > room + 1e-9) turns++;
  return { length: spare, turns, across: acrossOf(turns) };
}
