import { detour, fenceTakes, soundAt, soundTogether } from '../kernels/outdoorSound.ts';
import type { Ear, Place, Sounds, UnitBox, Wall } from '../result.ts';
import { bracketGap } from './fitsAt.ts';

/** m: nearer than this a unit is no point any more. */
const nearest = 0.5;
/** m above the ground of an ear at the property line. Source: `lineset.sound`. */
const earHigh = 1.5;

/** dB(A) of a unit of `power` dB at a place, wherever somebody would hear it: ground and wall send the sound back. Source: `lineset.sound`. */
export function soundsAt(wall: Wall, unit: UnitBox, place: Place, power: number): Sounds {
  const { line, neighbour } = wall.ground;
  const from: Ear = {
    x: place.x + unit.width / 2,
    z: place.z + unit.height / 2,
    out: (place.stands === 'wall' ? bracketGap : place.out) + unit.depth / 2,
  };
  const bedroom = loudestWindow(wall, place.stands === 'wall' ? { ...from, out: 0 } : from, power);
  return {
    ...(bedroom === undefined ? {} : { bedroom }),
    ...(line === undefined ? {} : { line: levelAt(wall, from, { x: from.x, out: line, z: earHigh }, power) }),
    ...(neighbour === undefined ? {} : { neighbour: levelAt(wall, from, neighbour, power) }),
  };
}

function loudestWindow(wall: Wall, from: Ear, power: number): number | undefined {
  const levels = wall.things
    .filter((t) => t.kind === 'bedroom')
    .map((t) => {
      const across = Math.max(t.x - from.x, from.x - (t.x + t.width), 0);
      const up = Math.max(t.z - from.z, from.z - (t.z + t.height), 0);
      return soundAt(power, Math.max(nearest, Math.hypot(across, up, from.out)), 2);
    });
  return levels.length === 0 ? undefined : Math.max(...levels);
}

/** The straight way, over a fence where one stands between, and by the second wall as from behind a mirror. */
function levelAt({ ground: { fence, mirror } }: Wall, from: Ear, ear: Ear, power: number): number {
  const one = (source: Ear): number => {
    const far = Math.hypot(ear.x - source.x, ear.out - source.out, ear.z - source.z);
    const takes = fence ? behindFence(fence, source, ear) : 0;
    return soundAt(power, Math.max(nearest, far), 2) - takes;
  };
  const straight = one(from);
  return mirror === undefined ? straight : soundTogether([straight, one({ ...from, x: 2 * mirror - from.x })]);
}

/** dB that a fence along the wall takes off between a unit before it and an ear behind it. */
function behindFence(fence: { readonly out: number; readonly top: number }, source: Ear, ear: Ear): number {
  const share = (fence.out - source.out) / (ear.out - source.out);
  if (!(share > 0 && share < 1)) return 0;
  const level = Math.hypot(ear.x - source.x, ear.out - source.out);
  const sight = source.z + share * (ear.z - source.z);
  if (fence.top <= sight) return 0;
  const over = {
    before: Math.hypot(share * level, fence.top - source.z),
    behind: Math.hypot((1 - share) * level, fence.top - ear.z),
  };
  return fenceTakes(detour(source.z, fence.top, share * level, ear.z, level), over);
}
