import { type Piece, planPath } from '../../physics/passage/index.ts';
import { smallestOpening } from '../kernels/boxes.ts';
import { hatchLeast, spareWanted } from '../spare.ts';
import type { AskedPassage, AskedWay } from './asked.ts';
import { type Attempt, attemptsOf } from './attempts.ts';
import type { Planned } from './planned.ts';

const widest = 1.6;
const within = 0.005;

/** Whether a piece passes with room for hands on every side in some way of holding it, certified. */
function passesSpare(passage: AskedPassage, piece: AskedWay['piece']): boolean {
  return attemptsOf({ passage, piece }).some(
    ({ bound, stages }) =>
      bound >= spareWanted &&
      stages.every(({ scene, piece: p }) => {
        const grown: Piece = { a: p.a + spareWanted / 2, b: p.b + spareWanted / 2 };
        return planPath(scene.asked(grown), grown).answer === 'passes';
      }),
  );
}

/** The least of `low` to `high` that does, to 5 mm, certified at the answer; nothing where even the high end does not. */
function leastThat(does: (value: number) => boolean, low: number, high: number): number | undefined {
  if (!does(high)) return undefined;
  if (does(low)) return low;
  let [no, yes] = [low, high];
  while (yes - no > within) {
    const middle = (no + yes) / 2;
    if (does(middle)) yes = middle;
    else no = middle;
  }
  return yes;
}

/**
 * Of a hatch: the free height above it that is enough for this way of holding the piece, and where it does not pass the smallest
 * opening that would do under the height there is, both certified with room for hands. Nothing for other passages.
 */
export function openingFor(
  way: AskedWay,
  best: Attempt,
  answer: Planned['answer'],
): Pick<Planned, 'headroom' | 'opening'> {
  const { passage, piece } = way;
  if (passage.kind !== 'hatch') return {};
  const fits = best.bound > 0;
  const [least, most] = [
    Math.min(piece.width, piece.depth, piece.height),
    Math.hypot(piece.width, piece.depth, piece.height) + 0.1,
  ];
  // With level height above: a slope only adds to it.
  const under = (headroom: number): AskedPassage => ({ ...passage, headroom, roof: 0 });
  const headroom = fits ? leastThat((h) => passesSpare(under(h), piece), least, most) : undefined;
  const opening = answer === 'passes' ? undefined : smallestThatDoes(way);
  return { ...(headroom === undefined ? {} : { headroom }), ...(opening ? { opening } : {}) };
}

/** The smallest opening square to the piece if that does; else that one made longer until it does. Never less than codes ask. */
function smallestThatDoes({ passage, piece }: AskedWay): readonly [number, number] | undefined {
  const [long, short] = smallestOpening(piece, spareWanted);
  const [a, b] = [Math.max(long, hatchLeast[1]), Math.max(short, hatchLeast[0])];
  const opened = (height: number): AskedPassage => ({ ...passage, width: b, height: height + passage.ladder });
  if (passage.headroom === undefined) return [a + passage.ladder, b];
  const needed = leastThat((height) => passesSpare(opened(height), piece), a, Math.max(widest, a + 0.3));
  return needed === undefined ? undefined : [needed, b];
}
