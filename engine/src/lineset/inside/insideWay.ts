import { inOrder, type ResolvedProject } from '@kneewall/project';
import { attempt, type Outcome, required, unresolved } from '../../plan/outcome.ts';
import type { Scenario } from '../../plan/scenario.ts';
import { type Block, bendSpare, type InsideWay, type Point, wayAmong } from './boxWay.ts';

type Lineset = ResolvedProject['routes']['lineset'];
type Place = Lineset['indoor']['from'];
type Box = Lineset['indoor']['things'][string];

/** m kept free between the line and what stands in its way. Source: `lineset.way`. */
const lineClear = 0.05;

/** The way inside to one wall: the wall's thickness counted in its length; `bendSpare` m over at its tightest stretch, none without bends. */
export type Inside = InsideWay & { readonly bendSpare?: number; readonly down: number; readonly up: number };

/** Whether anything of a way inside to that wall is described. */
export const insideDrawn = ({ indoor, walls }: Lineset, wall: string): boolean => {
  const hole = walls[wall]?.hole;
  return hole !== undefined && !('missing' in indoor.from.x) && !('missing' in hole.x);
};

/** The shortest way from the air handler to the hole in a wall and through it, round what stands inside. */
export function insideWay({ indoor, walls, bend }: Lineset, wall: string, s: Scenario): Outcome<Inside> {
  return attempt(() => {
    const to = walls[wall] ?? unresolved('missing', `routes.lineset.walls.${wall}`);
    const spaces = inOrder(indoor.spaces).map(([, b]) => blockOf(b, 0, s));
    const things = inOrder(indoor.things).map(([, b]) => blockOf(b, lineClear, s));
    const way = wayAmong(pointOf(indoor.from, s), pointOf(to.hole, s), spaces, things);
    if (way === undefined || way === 'too-many') return unresolved('out-of-range', 'routes.lineset.indoor.from.x');
    const spare = bendSpare(way.points, s.of(bend));
    const climbs = way.points.slice(1).map((p, i) => p[2] - (way.points[i]?.[2] ?? p[2]));
    const sum = (sign: number): number => climbs.reduce((total, c) => total + Math.max(0, sign * c), 0);
    return {
      ...way,
      length: way.length + s.of(to.thickness),
      ...(Number.isFinite(spare) ? { bendSpare: spare } : {}),
      down: sum(-1),
      up: sum(1),
    };
  });
}

/** m of line up to where it comes out: measured where it is, else the shortest way. */
export function insideLength(lineset: Lineset, wall: string, s: Scenario): number {
  const { inside } = lineset.walls[wall] ?? unresolved('missing', `routes.lineset.walls.${wall}`);
  const measured = s.maybe(inside);
  if (measured !== undefined) return measured;
  return insideDrawn(lineset, wall) ? required(insideWay(lineset, wall, s)).length : s.of(inside);
}

const pointOf = ({ x, y, z }: Place, s: Scenario): Point => [s.of(x), s.of(y), s.of(z)];

function blockOf(b: Box, around: number, s: Scenario): Block {
  const [x, y, z] = [s.of(b.x), s.of(b.y), s.of(b.z)];
  return {
    low: [x - around, y - around, z - around],
    high: [x + s.of(b.width) + around, y + s.of(b.depth) + around, z + s.of(b.height) + around],
  };
}
