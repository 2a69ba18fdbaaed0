import type { Piece } from '../../physics/passage/index.ts';
import { type Box, type Leading, sides } from '../kernels/boxes.ts';
import type { AskedPassage, AskedWay } from './asked.ts';
import { flightScene } from './flightScene.ts';
import { hatchScene } from './hatchScene.ts';
import { cornerScene, doorScene, straightScene } from './planScenes.ts';
import type { Scene } from './scene.ts';

/** One plane a piece goes through, two of its sides in it: m to spare in the third direction are `beside`. */
export type Stage = {
  readonly scene: Scene;
  readonly sides: readonly [Leading, Leading];
  readonly piece: Piece;
  readonly beside: number;
  /** The opening in this plane, m, where it is a hatch: along the picture, and into it. */
  readonly slot?: readonly [number, number];
  /** Degrees by which it is carried with one end up, so that it is shorter in plan. */
  readonly tilted?: number;
};

/** One way of holding a piece: all its stages must pass. */
export type Attempt = { readonly stages: readonly Stage[]; readonly bound: number };

const attempt = (...stages: readonly Stage[]): Attempt => ({
  stages,
  bound: Math.min(...stages.map(({ scene, piece, beside }) => Math.min(beside, scene.bound(piece)))),
});

const pieceOf = (length: number, width: number): Piece => ({ a: length / 2, b: width / 2 });

/** The two sides that are not this one, the longer first. */
function others(box: Box, not: Leading): readonly [Leading, Leading] {
  const [x, y] = sides.filter((s) => s !== not) as [Leading, Leading];
  return box[x] >= box[y] ? [x, y] : [y, x];
}

/** Every way in which a piece is held at a passage, by planes in which it keeps square to the third direction; the roomiest first. */
export function attemptsOf(way: AskedWay): readonly Attempt[] {
  const found = way.passage.kind === 'hatch' ? throughHatch(way) : alongFloor(way);
  return [...found].sort((x, y) => y.bound - x.bound);
}

function throughHatch({ passage, piece }: AskedWay): Attempt[] {
  const long = Math.max(passage.height, passage.width);
  const taken = (side: number): number => (side === long ? side - passage.ladder : side);
  const [height, width] = [taken(passage.height), taken(passage.width)];
  return (['height', 'width'] as const).flatMap((along) => {
    const [slot, across] = along === 'height' ? [height, width] : [width, height];
    const { framing, below, headroom, ridge } = passage;
    // Across the way in which it rises the roof is level, as high as over the lower edge.
    const slope = along === passage.rises ? passage.roof : 0;
    if (slot <= 0.01) return [];
    const scene = hatchScene({ slot, framing, below, headroom, slope, ridge: slope > 0 ? ridge : undefined });
    return sides.map((side) => {
      const [x, y] = others(piece, side);
      const beside = across - piece[side];
      return attempt({ scene, sides: [x, y], piece: pieceOf(piece[x], piece[y]), beside, slot: [slot, across] });
    });
  });
}

/** m that a piece carried with one end up keeps under the ceiling. */
const tiltSpare = 0.024;

/** Doors, stairs and ways: the piece stands on one side, from above; on a stair it also goes up the flight as it stands. */
function alongFloor({ passage, piece }: AskedWay): Attempt[] {
  const plan = planOf(passage);
  return sides.flatMap((upright) => {
    const [x, y] = others(piece, upright);
    const beside = passage.height - piece[upright];
    const level: Stage = { scene: plan, sides: [x, y], piece: pieceOf(piece[x], piece[y]), beside };
    const flights = [...flightStages(passage, piece, x, upright, y), ...flightStages(passage, piece, y, upright, x)];
    const held = flights.length > 0 ? flights.map((f) => attempt(level, f)) : [attempt(level)];
    const tilt =
      passage.after === undefined || flights.length > 0 ? undefined : tiltOf(piece[x], piece[upright], passage.height);
    if (!tilt) return held;
    const tilted = { ...level, piece: pieceOf(tilt.length, piece[y]), beside: tiltSpare, tilted: tilt.degrees };
    return [...held, attempt(tilted)];
  });
}

function planOf({ kind, width, framing, after }: AskedPassage): Scene {
  if (after === undefined) return straightScene(width, kind === 'door' ? framing : 1);
  return kind === 'door' ? doorScene(width, framing, after) : cornerScene(width, after);
}

/** The flight from the side, where its steps and headroom are known. */
function flightStages(
  { kind, rise, going, headroom, storey, below, width }: AskedPassage,
  box: Box,
  along: Leading,
  up: Leading,
  across: Leading,
): Stage[] {
  if (kind !== 'stair' || rise === undefined || going === undefined || headroom === undefined) return [];
  if (rise <= 0.01 || going <= 0.01) return [];
  const scene = flightScene({ storey, rise, going, headroom, below });
  return [{ scene, sides: [along, up], piece: pieceOf(box[along], box[up]), beside: width - box[across] }];
}

/** A box with one end up as far as the ceiling lets it, where that makes it shorter from above: its length in plan. */
function tiltOf(
  length: number,
  high: number,
  ceiling: number,
): { readonly length: number; readonly degrees: number } | undefined {
  const top = ceiling - tiltSpare;
  const reach = Math.hypot(length, high);
  if (top <= high) return undefined;
  const most = top >= reach ? Math.PI / 2 : Math.asin(top / reach) - Math.atan2(high, length);
  const inPlan = length * Math.cos(most) + high * Math.sin(most);
  return inPlan < length ? { length: inPlan, degrees: (most * 180) / Math.PI } : undefined;
}
