import { areaOfOutline, bendsOfWay, crossingOf, lengthOfWay, printQuantity, type System } from '@kneewall/project';
import type { Point, Points } from './corners.ts';
import { spotOf } from './corners.ts';

export const wayOf = (points: Points): [number, number, number][] =>
  points.map(([x = 0, y = 0, z = 0]: Point) => [x, y, z]);

/** “14' 3" drawn, 2 bends”, “135 sq ft drawn”, “sides cross”, “not drawn”: what a folded drawing says of itself. */
export function drawnWords(points: Points, closed: boolean, units: System): string {
  if (points.length === 0) return 'not drawn';
  if (points.length < (closed ? 3 : 2)) return 'begun';
  if (closed) {
    const corners = points.map(spotOf);
    if (crossingOf(corners)) return 'its sides cross';
    return `${printQuantity(areaOfOutline(corners), 'area', units)} drawn`;
  }
  const way = wayOf(points);
  return `${printQuantity(lengthOfWay(way), 'length', units)} drawn, ${bendWords(bendsOfWay(way).length)}`;
}

export const bendWords = (count: number): string =>
  count === 0 ? 'no bend' : `${count} bend${count === 1 ? '' : 's'}`;
