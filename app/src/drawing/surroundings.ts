import { inOrder, type Project } from '@kneewall/project';
import { type Point, type Points, type Spot, spotOf } from './corners.ts';

/** What else stands on the plan while one thing is drawn. */
export type Surroundings = {
  readonly closed: boolean;
  readonly rooms: readonly { readonly id: string; readonly name: string; readonly corners: readonly Spot[] }[];
  readonly ways: readonly { readonly id: string; readonly spots: readonly Spot[] }[];
  /** Ends that a corner may take over. */
  readonly ends: readonly Point[];
  /** Where something that is not drawn yet would begin. */
  readonly start: Point;
};

/** Reads what surrounds a room's outline or a section's way, by the path of the field that is drawn. Pure. */
export function surroundingsOf(project: Project, path: readonly string[]): Surroundings {
  const id = path.at(-2) ?? '';
  const closed = path.at(-1) === 'outline';
  const rooms = inOrder(project.house?.rooms ?? {}).flatMap(([key, { name, outline }]) =>
    outline && outline.length > 1 && !(closed && key === id)
      ? [{ id: key, name: name ?? key, corners: outline.map(spotOf) }]
      : [],
  );
  const sections = project.routes?.ducts?.sections ?? {};
  const ways = inOrder(sections).flatMap(([key, { points = [] }]) =>
    points.length > 1 && (closed || key !== id) ? [{ id: key, points }] : [],
  );
  const handler = placeOf(project.routes?.ducts?.handler?.at);
  const registers = Object.values(project.routes?.ducts?.terminals ?? {}).flatMap(({ at }) => placeOf(at));
  const wayEnds: Points = [...ways.flatMap(({ points }) => [points[0] ?? [], points.at(-1) ?? []])];
  const joins = sections[sections[id]?.from ?? '']?.points?.at(-1);
  const free = Math.max(0, ...rooms.flatMap((r) => r.corners.map(([x]) => x)));
  return {
    closed,
    rooms,
    ways: ways.map(({ id: key, points }) => ({ id: key, spots: points.map(spotOf) })),
    ends: closed ? rooms.flatMap((r) => r.corners) : [...wayEnds, ...handler, ...registers],
    start: closed ? [free, 0] : (joins ?? handler[0] ?? wayEnds[0] ?? [0, 0, 0]),
  };
}

type Place = NonNullable<NonNullable<NonNullable<Project['routes']>['ducts']>['handler']>['at'];

/** A place somebody entered, as a point; none while one of its numbers in plan is missing. */
function placeOf(at: Place): Points {
  const [x, y, z] = [at?.x, at?.y, at?.z].map((e) => (typeof e?.value === 'object' ? e.value.likely : e?.value));
  return x === undefined || y === undefined ? [] : [[x, y, z ?? 0]];
}
