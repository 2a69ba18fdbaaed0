import { areaOfOutline, crossingOf, usableArea } from '../drawn/outline.ts';
import { printQuantity } from '../quantity/index.ts';
import type { Project } from '../schema/project.ts';
import { asked, type Path, type Problem } from './problem.ts';
import type { Given, ResolvedProject } from './resolved.ts';

type Rooms = ResolvedProject['house']['rooms'];

/** Rooms with the area of their outlines for their floor, where one stands for an area; the others as they are. */
export const roomsByOutline = (rooms: Rooms): Rooms =>
  Object.fromEntries(
    Object.entries(rooms).map(([id, room]) => {
      const area = usableArea(room.outline);
      if (area === undefined) return [id, room];
      const floorArea: Given = {
        path: `house.rooms.${id}.outline`,
        kind: 'area',
        known: 'estimated',
        low: area,
        likely: area,
        high: area,
      };
      return [id, { ...room, floorArea }];
    }),
  );

/** How far an outline may be from the entered area, as a share of that area. */
const slack = 0.1;

/** Outlines that cross themselves, and those that hold another area than the one entered. */
export function outlineProblems(project: Project): Problem[] {
  const units = project.site?.units ?? 'us';
  const print = (m2: number) => printQuantity(m2, 'area', units);
  return Object.entries(project.house?.rooms ?? {}).flatMap(([id, { outline, floorArea }]) => {
    const path: Path = ['house', 'rooms', id, 'outline'];
    const crossing = outline && crossingOf(outline);
    if (crossing) {
      const [one, other] = crossing.sides.map((side) => side + 1);
      const mend = `The side from corner ${one} meets the side from corner ${other}. Until it is mended the outline does not count.`;
      return [asked('outline-crossed', path, mend)];
    }
    if (!outline || !floorArea || usableArea(outline) === undefined) return [];
    const drawn = areaOfOutline(outline);
    const entered = typeof floorArea.value === 'number' ? floorArea.value : floorArea.value.likely;
    if (Math.abs(drawn - entered) <= slack * entered) return [];
    const mend = `The outline holds ${print(drawn)} and the floor area is entered as ${print(entered)}. The outline counts; correct the one that is wrong.`;
    return [asked('area-differs', path, mend, { found: drawn, allowed: entered })];
  });
}
