import type { Fits, GroundThing, Place, UnitBox, Wall } from '../result.ts';

/** m beside what drips within which its water freezes underfoot. Source: `lineset.ice`. */
const iceBeside = 0.3;
/** m that a unit on a bracket stands off the wall. Source: `lineset.clear`. */
export const bracketGap = 0.15;
/** m behind a unit on the ground, and before windows and doors, at the least. Source: `lineset.clear`. */
const behind = 0.1;
const beforeWindow = 0.6;
const beforeDoor = 1.2;

type Span = { readonly from: number; readonly to: number };
const meets = (a: Span, b: Span): boolean => a.from < b.to - 1e-9 && b.from < a.to - 1e-9;
const spanOf = (from: number, size: number, around = 0): Span => ({ from: from - around, to: from + size + around });

/**
 * What keeps a unit from a place, the worst first: it must lie on wall or ground, cover nothing, have its clearances, keep
 * from the property line, be lifted to and stood before, and drip on no walk, step or door.
 */
export function fitsAt(wall: Wall, unit: UnitBox, place: Place): Fits {
  const found = place.stands === 'wall' ? onWall(wall, unit, place) : onGround(wall, unit, place);
  if (found !== 'yes') return found;
  const back = place.stands === 'wall' ? bracketGap : place.out;
  const front = back + unit.depth;
  const { line, lineLeast, things } = wall.ground;
  if (line !== undefined && line - front < (lineLeast ?? 0) - 1e-9) return 'line';
  if (place.z > unit.liftMost + 1e-9) return 'too-high';
  const on = (kinds: readonly GroundThing['kind'][], across: Span, out: Span): boolean =>
    things.some(
      (t) => kinds.includes(t.kind) && meets(across, spanOf(t.x, t.width)) && meets(out, spanOf(t.out, t.depth)),
    );
  if (on(['soft', 'other'], spanOf(place.x, unit.width), { from: front, to: front + unit.footing }))
    return 'no-footing';
  const drips = spanOf(place.x, unit.width, iceBeside);
  const wets = { from: Math.max(0, back - iceBeside), to: front + iceBeside };
  return on(['walk', 'step'], drips, wets) || overDoor(wall, drips, place) ? 'ice' : 'yes';
}

/** Before a door somebody steps out: nothing drips from above it. */
const overDoor = (wall: Wall, drips: Span, { stands, z }: Place): boolean =>
  stands === 'wall' && wall.things.some((t) => t.kind === 'door' && t.z < z && meets(drips, spanOf(t.x, t.width)));

function onWall(wall: Wall, unit: UnitBox, { x, z }: Place): Fits {
  if (x < -1e-9 || z < -1e-9 || x + unit.width > wall.width + 1e-9 || z + unit.height > wall.height + 1e-9)
    return 'off-wall';
  const clashes = (beside: number, above: number): boolean =>
    wall.things.some(
      (t) =>
        meets(spanOf(x, unit.width, beside), spanOf(t.x, t.width)) &&
        meets({ from: z, to: z + unit.height + above }, spanOf(t.z, t.height)),
    );
  if (clashes(0, 0)) return 'covers';
  return clashes(unit.beside, unit.above) ? 'too-near' : 'yes';
}

function onGround({ width, things, ground }: Wall, unit: UnitBox, { x, z, out }: Place): Fits {
  const front = out + unit.depth;
  if (x < -1e-9 || out < -1e-9 || x + unit.width > width + 1e-9 || front > ground.depth + 1e-9) return 'off-wall';
  const lies = (around: number): boolean =>
    ground.things.some(
      (t) =>
        meets(spanOf(x, unit.width, around), spanOf(t.x, t.width)) &&
        meets(spanOf(out, unit.depth, around), spanOf(t.out, t.depth)),
    );
  if (lies(0)) return 'covers';
  const before = things.some(
    (t) =>
      meets(spanOf(x, unit.width), spanOf(t.x, t.width)) &&
      meets({ from: z, to: z + unit.height }, spanOf(t.z, t.height)) &&
      out < (t.kind === 'door' ? beforeDoor : t.kind === 'other' ? behind : beforeWindow),
  );
  return before || out < behind - 1e-9 ? 'too-near' : 'yes';
}
