import type { ResolvedProject } from '@kneewall/project';
import { attempt, unresolved } from '../plan/outcome.ts';
import { type Scenario, sampledScenario, scenario } from '../plan/scenario.ts';
import { type Box, neverThrough, type Pose, posesThrough, sides, smallestOpening } from './kernels/boxes.ts';
import { cornerSpare } from './kernels/corner.ts';
import { heightToClear } from './kernels/tilt.ts';
import { askedPassage } from './motion/asked.ts';
import type { PassageKind } from './passageKind.ts';
import type { Passing, PieceId, Way } from './result.ts';
import { hatchLeast, spareWanted } from './spare.ts';

export { hatchLeast } from './spare.ts';

type Passage = ResolvedProject['routes']['passages'][string];
type Candidate = ResolvedProject['candidates'][string];
type Sides = Candidate[PieceId];

const boxOf = (sidesOf: Sides, s: Scenario): Box => ({
  width: s.of(sidesOf.width),
  depth: s.of(sidesOf.depth),
  height: s.of(sidesOf.height),
});

/** Every pose of a box at a passage; round a corner each side may stand upright. */
function poses(box: Box, passage: Passage, s: Scenario): Pose[] {
  const opening = [s.of(passage.width), s.of(passage.height)] as const;
  const after = s.maybe(passage.after);
  if (after === undefined) return posesThrough(box, opening);
  return sides
    .map((upright): Pose => {
      const [x, y] = sides.filter((side) => side !== upright).sort((m, n) => box[n] - box[m]) as [keyof Box, keyof Box];
      const turned = cornerSpare(opening[0], after, box[x], box[y]);
      return {
        leading: x,
        length: box[x],
        face: [box[y], box[upright]],
        through: 'square',
        spare: Math.min(opening[1] - box[upright], turned),
      };
    })
    .sort((m, n) => n.spare - m.spare);
}

/** The likely reading, and those in which tape and data sheet lean to the worse and to the better. */
function readings(piece: Sides, passage: Passage): { readonly worse: Scenario; readonly better: Scenario } {
  const [worse, better] = [new Map<string, number>(), new Map<string, number>()];
  for (const side of sides) {
    const given = piece[side];
    if ('missing' in given) continue;
    worse.set(given.path, given.high);
    better.set(given.path, given.low);
  }
  for (const given of [passage.width, passage.height, passage.after]) {
    if ('missing' in given) continue;
    worse.set(given.path, given.low);
    better.set(given.path, given.high);
  }
  return { worse: sampledScenario(worse), better: sampledScenario(better) };
}

/** The smallest opening for it; of a hatch never less than codes ask. */
function smallestFor(box: Box, kind: PassageKind): readonly [number, number] {
  const [long, short] = smallestOpening(box, spareWanted);
  return kind === 'hatch' ? [Math.max(long, hatchLeast[1]), Math.max(short, hatchLeast[0])] : [long, short];
}

/** How a piece meets a passage. Ends the enclosing `attempt` where a measure is missing. */
function passingOf(piece: Sides, passage: Passage, kind: PassageKind): Passing {
  const s = scenario();
  const box = boxOf(piece, s);
  const all = poses(box, passage, s);
  const [pose] = all;
  if (!pose) return unresolved('missing', piece.width.path);
  const { worse, better } = readings(piece, passage);
  const spareIn = (of: Scenario): number => poses(boxOf(piece, of), passage, of)[0]?.spare ?? pose.spare;
  const opening = [s.of(passage.width), s.of(passage.height)] as const;
  const straight = 'missing' in passage.after;
  return {
    spare: { low: spareIn(worse), likely: pose.spare, high: spareIn(better) },
    pose,
    opening,
    never: straight && neverThrough(box, opening),
    smallest: smallestFor(box, kind),
    ...(kind === 'hatch' && pose.spare >= 0 ? { height: heightIn(box, all, opening, s.of(passage.framing)) } : {}),
  };
}

/** Free height over a hatch: the least over all poses that go in and both ways of leaning. */
function heightIn(box: Box, all: readonly Pose[], opening: readonly [number, number], framing: number) {
  const enough = all.flatMap(({ spare, through, length, face }) => {
    if (spare < 0) return [];
    const [p, q] = face;
    // Turned in the opening's plane it comes up straight, and passes over its diagonal when it is laid down.
    if (through === 'turned') return [Math.hypot(length, Math.min(p, q))];
    return [
      [p, q],
      [q, p],
    ].flatMap(([depth = 0, across = 0]) =>
      [opening, [opening[1], opening[0]] as const].flatMap(([slot, other]) =>
        across > other ? [] : (heightToClear(length, depth, slot, framing) ?? []),
      ),
    );
  });
  return { enough: Math.min(...enough), least: Math.min(...sides.map((side) => box[side])) };
}

const pieceNames: Readonly<Record<'handler' | 'outdoor' | 'both', readonly PieceId[]>> = {
  handler: ['handler', 'handlerCrated', 'handlerPart'],
  outdoor: ['outdoorUnit'],
  both: ['handler', 'handlerCrated', 'handlerPart', 'outdoorUnit'],
};

/** A unit that does not come apart has no part to tell of. */
const told = (unit: Candidate, piece: PieceId): boolean => piece !== 'handlerPart' || !('missing' in unit[piece].width);

/** m by which the readings of tape and data sheet, each at its worse end, may take from a total spare. */
function doubtOf(piece: Sides, passage: Passage): number {
  const short = sides.map((side) => piece[side]).map((g) => ('missing' in g ? 0 : g.high - g.likely));
  const measures = [passage.width, passage.height, passage.after, passage.headroom, passage.framing, passage.ridge];
  const wide = measures.map((g) => ('missing' in g ? 0 : Math.max(g.likely - g.low, g.high - g.likely)));
  return Math.max(...short) + 2 * Math.max(...wide);
}

/** Each piece of a unit at each passage that it has to pass. */
export function waysOf(
  candidate: string,
  unit: Candidate,
  passages: readonly (readonly [string, Passage])[],
): readonly Way[] {
  return passages.flatMap(([passage, at]) => {
    const s = scenario();
    const kind = s.choice(at.kind);
    const pieces = pieceNames[s.choice(at.carries)].filter((piece) => told(unit, piece));
    return pieces.map((piece) => ({
      candidate,
      unit: unit.name ?? candidate,
      piece,
      passage,
      name: at.name ?? passage,
      kind,
      passing: attempt(() => passingOf(unit[piece], at, kind)),
      asked: attempt(() => ({ passage: askedPassage(at, kind, s), piece: boxOf(unit[piece], s) })),
      planned: attempt(() => unresolved('pending', `routes.passages.${passage}`)),
      doubt: doubtOf(unit[piece], at),
    }));
  });
}
