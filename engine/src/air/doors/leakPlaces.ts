import { inOrder, type ResolvedProject } from '@kneewall/project';
import type { LeakFace } from '../../loads/house.ts';
import type { HouseLeaks } from '../../loads/result.ts';
import type { Scenario } from '../../plan/scenario.ts';
import type { LeakPlace } from './houseAir.ts';

type House = ResolvedProject['house'];

/** How a house's leaks are shared out where nobody measured it. Source: `air.leak-places` (from memory). */
const usualShares = { walls: 0.5, floor: 0.25, ceiling: 0.25 } as const;
/** A wall leaks alike all the way up: so many strips of it are told apart. */
const strips = 4;
/** m from a ceiling to the floor above it. Source: `air.leak-places` (common practice). */
const floorThickness = 0.25;

export type Heights = {
  /** m of each room's floor above the lowest, and of the ceiling below the attic. */
  readonly floors: Readonly<Record<string, number>>;
  readonly top: number;
  readonly places: Readonly<Record<string, readonly LeakPlace[]>>;
};

/**
 * Where each room leaks: its walls by the way they face, from bottom to top; its floor on the lowest storey, unless that
 * is a slab; its ceiling on the highest.
 */
export function leakHeights(house: House, faces: HouseLeaks['faces'], s: Scenario): Heights {
  const rooms = inOrder(house.rooms).map(([id, room]) => ({
    id,
    storey: Math.max(1, Math.round(s.of(room.storey))),
    height: s.of(room.height),
  }));
  const highest = Math.max(1, ...rooms.map((r) => r.storey));
  const lowest = Math.min(highest, ...rooms.map((r) => r.storey));
  const storey = Math.max(0, ...rooms.map((r) => r.height)) + floorThickness;
  const slab = s.choice(house.below) === 'slab';
  const floorOf = (r: { storey: number }): number => (r.storey - lowest) * storey;
  const placesOf = (r: (typeof rooms)[number]): LeakPlace[] =>
    whole([
      ...wallPlaces(floorOf(r), r.height, faces[r.id] ?? []),
      ...(r.storey === lowest && !slab ? [{ height: floorOf(r), share: usualShares.floor }] : []),
      ...(r.storey === highest ? [{ height: floorOf(r) + r.height, share: usualShares.ceiling }] : []),
    ]);
  return {
    floors: Object.fromEntries(rooms.map((r) => [r.id, floorOf(r)])),
    top: Math.max(0, ...rooms.map((r) => floorOf(r) + r.height)),
    places: Object.fromEntries(rooms.map((r) => [r.id, placesOf(r)])),
  };
}

/** Walls of a room that nobody drew face every way alike. */
const allWays: readonly LeakFace[] = [0, 90, 180, 270].map((faces) => ({ faces, share: 0.25 }));

const wallPlaces = (floor: number, height: number, faces: readonly LeakFace[]): LeakPlace[] =>
  Array.from({ length: strips }, (_, i) => floor + ((i + 0.5) / strips) * height).flatMap((at) =>
    (faces.length > 0 ? faces : allWays).map((f) => ({
      height: at,
      faces: f.faces,
      share: (usualShares.walls * f.share) / strips,
    })),
  );

/** The same parts, sharing all there is. */
function whole(places: readonly LeakPlace[]): LeakPlace[] {
  const all = places.reduce((a, p) => a + p.share, 0);
  return places.map((p) => ({ ...p, share: p.share / all }));
}

/** The leaks of several rooms as one, each by its weight; alike by all of them where none weighs anything. */
export function placesTogether(rooms: readonly { readonly places: readonly LeakPlace[]; readonly weight: number }[]) {
  const all = rooms.reduce((a, r) => a + r.weight, 0);
  return rooms.flatMap(({ places, weight }) =>
    places.map((p) => ({ ...p, share: p.share * (all > 0 ? weight / all : 1 / rooms.length) })),
  );
}
