import { neededAt, placeAt, type Ways, waysOn } from '../reach.ts';
import type { Asked, GoodPlace, Place, UnitBox, Wall } from '../result.ts';
import { cell } from '../wallGrid.ts';
import { soundsAt } from './soundsAt.ts';

/** Cells from one place looked at to the next. */
const apart = 4;
const most = 5;

type Given = Asked & {
  /** m more that the spare may come to: a good place is reached even then. */
  readonly more: number;
  /** dB(A) that a window may have at night. */
  readonly nightMost: number;
};

/**
 * The best place of each set on each wall and on the ground before it, the best of all first: the shorter set, then what
 * is too loud by less, then the quieter by whole dB, then the lower, then the more line to spare.
 */
export function goodPlaces(
  walls: readonly { readonly wall: Wall; readonly ways?: Ways }[],
  given: Given,
): readonly GoodPlace[] {
  const best = new Map<string, GoodPlace>();
  for (const { wall, ways = waysOn(wall) } of walls)
    for (const place of placesOf(ways, given.unit)) {
      const found = goodAt(wall, ways, place, given);
      if (!found) continue;
      const key = `${wall.id} ${place.stands} ${found.stock}`;
      const was = best.get(key);
      if (!was || before(found, was, given.nightMost) < 0) best.set(key, found);
    }
  return [...best.values()].sort((a, b) => before(a, b, given.nightMost)).slice(0, most);
}

function* placesOf({ grid }: Ways, unit: UnitBox): Generator<Place> {
  for (const stands of ['wall', 'ground'] as const) {
    const rows = stands === 'wall' ? grid.rows - grid.ground : grid.ground;
    // The first row above the snow, not the next that is looked at.
    const first = stands === 'wall' ? Math.ceil(unit.baseLeast / cell - 1e-9) : 0;
    for (let r = first; r < rows; r += apart)
      for (let c = 0; c < grid.columns; c += apart) yield placeAt(stands, unit, c * cell, r * cell);
  }
}

function goodAt(
  wall: Wall,
  ways: Ways,
  place: Place,
  { unit, stock, slack, more, power }: Given,
): GoodPlace | undefined {
  const needed = neededAt(wall, ways, unit, slack, place);
  const k = needed === undefined ? -1 : stock.findIndex((s) => s.length >= needed + more - 1e-9);
  const set = stock[k];
  if (needed === undefined || !set) return undefined;
  const sounds = power === undefined ? {} : soundsAt(wall, unit, place, power);
  return { ...place, ...sounds, wall: wall.id, stock: k, needed, spare: set.length - needed };
}

function before(a: GoodPlace, b: GoodPlace, nightMost: number): number {
  const loudest = (p: GoodPlace): number => Math.round(Math.max(0, p.bedroom ?? 0, p.neighbour ?? 0));
  const over = (p: GoodPlace): number => Math.max(0, loudest(p) - nightMost);
  return (
    a.stock - b.stock ||
    over(a) - over(b) ||
    loudest(a) - loudest(b) ||
    a.z - b.z ||
    b.spare - a.spare ||
    a.x - b.x ||
    (a.wall < b.wall ? -1 : a.wall > b.wall ? 1 : 0)
  );
}
