import type { Asked, UnitPlace, Wall } from '@kneewall/engine';

/** m by which the unit moves: an inch, or 25 mm. */
export const moveStep = { us: 0.0254, si: 0.025 } as const;

/** A place on a wall that is known by its id. */
export type On = UnitPlace & { readonly wall: string };

/** The corner of the unit that the picture has lowest and leftmost: above the ground on a wall, below 0 before it. */
export const lowerLeft = ({ stands, x, z, out }: UnitPlace, { depth }: Asked['unit']): readonly [number, number] =>
  stands === 'wall' ? [x, z] : [x, -out - depth];

/** m of the unit as the picture shows it: from before on a wall, from above on the ground. */
export const sizeOf = ({ stands }: UnitPlace, { width, height, depth }: Asked['unit']): readonly [number, number] =>
  stands === 'wall' ? [width, height] : [width, depth];

/**
 * The place of a unit whose middle is brought to a spot of the picture: on the wall above the ground line, on a stand below
 * it where there is ground. It stays on wall and ground, and goes by whole steps.
 */
export function placeUnder(
  wall: Wall,
  { baseLeast, ...unit }: Asked['unit'],
  was: UnitPlace,
  [x, z]: readonly [number, number],
  step: number,
): On {
  const stands = z < 0 && wall.ground.depth >= unit.depth ? 'ground' : 'wall';
  const far = stands === 'wall' ? z - unit.height / 2 : -z - unit.depth / 2;
  const most = stands === 'wall' ? wall.height - unit.height : wall.ground.depth - unit.depth;
  const left = within(whole(x - unit.width / 2, step), 0, wall.width - unit.width);
  const along = within(whole(far, step), 0, most);
  if (stands === 'wall') return { wall: wall.id, stands, x: left, z: along, out: was.out };
  // A stand is as high as the snow asks, unless it was higher.
  const z0 = was.stands === 'ground' ? was.z : Math.ceil(baseLeast / step - 1e-9) * step;
  return { wall: wall.id, stands, x: left, z: z0, out: along };
}

/** One press of an arrow key, `far` m: up and down on a wall, nearer and farther on the ground; through the ground line too. */
export function nudged(
  wall: Wall,
  unit: Asked['unit'],
  was: UnitPlace,
  [dx, dz]: readonly [number, number],
  far: number,
): On {
  const x = within(was.x + dx * far, 0, wall.width - unit.width);
  if (was.stands === 'wall') {
    const z = within(was.z + dz * far, 0, wall.height - unit.height);
    if (dz < 0 && was.z <= 1e-9 && wall.ground.depth >= unit.depth)
      return { wall: wall.id, stands: 'ground', x, z: Math.ceil(unit.baseLeast / far - 1e-9) * far, out: 0 };
    return { ...was, wall: wall.id, x, z };
  }
  if (dz > 0 && was.out <= 1e-9) return { wall: wall.id, stands: 'wall', x, z: 0, out: was.out };
  return { ...was, wall: wall.id, x, out: within(was.out - dz * far, 0, wall.ground.depth - unit.depth) };
}

const whole = (x: number, step: number): number => Math.round(x / step) * step;
const within = (x: number, low: number, high: number): number => Math.max(low, Math.min(Math.max(low, high), x));

const root = ['routes', 'lineset', 'place'] as const;
const entry = (value: number) => ({ value: Math.round(value * 1e4) / 1e4, known: 'estimated' });

/** What has to be written so that the unit has its place there: one act. */
export const placeChanges = ({ wall, stands, x, z, out }: On) => [
  { path: [...root, 'wall'], after: wall },
  { path: [...root, 'stands'], after: stands },
  { path: [...root, 'x'], after: entry(x) },
  { path: [...root, 'z'], after: entry(z) },
  ...(stands === 'ground' ? [{ path: [...root, 'out'], after: entry(out) }] : []),
];
