import { type Room, roomOnWay } from '../../physics/passage/index.ts';
import type { AskedWay } from './asked.ts';
import { type Attempt, attemptsOf, type Stage } from './attempts.ts';
import { openingFor } from './openingFor.ts';
import type { Planned, PlannedStage, Proof } from './planned.ts';
import { tightestOn } from './tightest.ts';

/** m of total spare beyond which nothing more is asked: hands on both sides, twice over. */
const plenty = 0.06;

type Held = {
  readonly attempt: Attempt;
  readonly rooms: readonly (Room | undefined)[];
  readonly low: number;
  readonly high: number;
  readonly decided: boolean;
};

/**
 * Plans a piece through a passage in its planes, every way of holding it, the roomiest first: whether it passes, certified; how
 * much is left; where it is tightest. It never turns out of a plane on the way: that is not looked at, and `blocked` says no more.
 */
export function planWay(way: AskedWay): Planned {
  let best: Held | undefined;
  const attempts = attemptsOf(way);
  // The roomiest way of holding it comes first: where even that is too wide, all are, however a search ends.
  const tooWide = attempts.every(({ bound }) => bound <= 0);
  for (const attempt of attempts) {
    if (best && best.low >= Math.min(plenty, attempt.bound) - 0.002) break;
    const held = hold(attempt);
    if (!best || held.low > best.low || (held.low === best.low && held.high > best.high)) best = held;
  }
  if (!best) return { answer: 'blocked', proof: 'width', spare: { low: 0, high: 0 }, stages: [] };
  const { low, high, decided } = best;
  const answer = low > 0 ? 'passes' : tooWide || (high <= 0 && decided) ? 'blocked' : 'unknown';
  const proof: Proof =
    answer === 'passes' ? 'replayed' : answer === 'unknown' ? 'open' : best.attempt.bound <= 0 ? 'width' : 'closed';
  const stages = best.attempt.stages.flatMap((stage, k) => drawn(stage, best.rooms[k]));
  return { answer, proof, spare: { low, high }, stages, ...openingFor(way, best.attempt, answer) };
}

/** How much room all stages of one way of holding a piece leave. */
function hold(attempt: Attempt): Held {
  const rooms = attempt.stages.map((stage) => roomOf(stage));
  const ends = rooms.map((room, k) => {
    const beside = (attempt.stages[k] as Stage).beside;
    const low = room ? 2 * room.low : Number.NEGATIVE_INFINITY;
    const high = room ? 2 * room.high : 0;
    return { low: Math.min(beside, low), high: Math.min(beside, high), decided: room?.decided ?? false };
  });
  const low = Math.min(...ends.map((e) => e.low));
  return {
    attempt,
    rooms,
    low: Number.isFinite(low) ? low : Math.min(attempt.bound, -0.3),
    high: Math.min(...ends.map((e) => e.high)),
    decided: ends.some((e) => e.high <= 0 && e.decided) || ends.every((e) => e.decided),
  };
}

function roomOf({ scene, piece }: Stage): Room | undefined {
  const bound = scene.bound(piece);
  return roomOnWay(scene.asked, piece, bound / 2 - 0.0005, Math.min(bound, plenty) / 2);
}

const tidied = (n: number): number => Math.round(n * 1e6) / 1e6;

function drawn({ scene, sides, piece, tilted }: Stage, room: Room | undefined): PlannedStage[] {
  if (!room) return [];
  const { obstacles } = scene.asked(piece);
  return [
    {
      view: scene.view,
      sides,
      piece: [2 * piece.a, 2 * piece.b],
      outlines: scene.outlines,
      path: room.path.map(tidied),
      tightest: tightestOn(obstacles, piece, room.path, scene.view === 'hatch' ? (low) => low < -0.01 : undefined),
      ...(tilted === undefined ? {} : { tilted }),
    },
  ];
}
