import { fitsAt } from './place/fitsAt.ts';
import type { Asked, Place, Reached, ReachMap, UnitBox, Wall, WayPoint } from './result.ts';
import { cell, cellAt, type WallGrid, wallGrid } from './wallGrid.ts';
import { stepsFrom } from './way.kernel.ts';

/** m kept free between the line and whatever is on the wall. Source: `lineset.way`. */
const lineClear = 0.05;
/** m above the unit's base at which its pipes leave, on its right. Source: `lineset.way`. */
export const pipesAt = 0.3;

/** m of line from where it comes out to each cell; not finite where none leads. */
export type Ways = { readonly grid: WallGrid; readonly steps: Int32Array };

export function waysOn(wall: Wall): Ways {
  const grid = wallGrid(wall, lineClear);
  const steps = new Int32Array(grid.columns * grid.rows);
  const from = cellAt(grid, Math.min(wall.out.x, wall.width - cell / 2), Math.min(wall.out.z, wall.height - cell / 2));
  if (from === undefined) steps.fill(-1);
  else stepsFrom(grid, from, steps, new Int32Array(steps.length));
  return { grid, steps };
}

/** Where the line leaves wall or ground for the unit's pipes, and m that it then climbs. */
function pipesOf(unit: UnitBox, { stands, x, z, out }: Place): { x: number; z: number; climb: number } {
  const high = Math.min(pipesAt, unit.height / 2);
  return stands === 'wall'
    ? { x: x + unit.width, z: z + high, climb: 0 }
    : { x: x + unit.width, z: -(out + unit.depth / 2), climb: z + high };
}

/** m of line outside to the pipes of a unit at a place; undefined where no way leads. */
export function lineTo({ grid, steps }: Ways, unit: UnitBox, place: Place): number | undefined {
  const pipes = pipesOf(unit, place);
  const at = cellAt(grid, pipes.x, pipes.z);
  const count = at === undefined ? -1 : (steps[at] ?? -1);
  return count < 0 ? undefined : count * cell + pipes.climb;
}

/** The corners of the line outside, from where it comes out; as few bends as a look back along it finds. */
export function wayTo({ grid, steps }: Ways, unit: UnitBox, place: Place): WayPoint[] {
  const pipes = pipesOf(unit, place);
  let at = cellAt(grid, pipes.x, pipes.z);
  if (at === undefined || (steps[at] ?? -1) < 0) return [];
  const pointOf = (i: number): WayPoint => [
    ((i % grid.columns) + 0.5) * cell,
    (Math.floor(i / grid.columns) - grid.ground + 0.5) * cell,
  ];
  const points = [pointOf(at)];
  let along = 0;
  while ((steps[at] ?? 0) > 0) {
    const here: number = at;
    const wanted = (steps[here] ?? 0) - 1;
    const sides = [along, -1, 1, -grid.columns, grid.columns];
    const side: number = sides.find((d) => d !== 0 && leads(grid, here, d) && steps[here + d] === wanted) ?? 0;
    if (side === 0) break;
    if (along !== 0 && side !== along) points.push(pointOf(here));
    along = side;
    at = here + side;
  }
  points.push(pointOf(at));
  return points.reverse();
}

/** Whether a step from a cell stays on the grid: one to the side does not jump to the next row. */
const leads = ({ columns }: WallGrid, at: number, by: number): boolean =>
  by === -1 ? at % columns > 0 : by === 1 ? at % columns < columns - 1 : true;

/**
 * Where a unit's lower left corner may lie on a wall, or its back left one on the ground before it, by the shortest stock
 * length that reaches it with `slack` m in hand. Source: `lineset.way`.
 */
export function reachMap(
  wall: Wall,
  { unit, stock, slack }: Asked,
  stands: Place['stands'] = 'wall',
  ways: Ways = waysOn(wall),
): ReachMap {
  const { columns, rows, ground } = ways.grid;
  const count = stands === 'wall' ? rows - ground : ground;
  let best: ReachMap['best'];
  const reached: Reached[][] = [];
  for (let r = 0; r < count; r++) {
    const row: Reached[] = [];
    for (let c = 0; c < columns; c++) {
      const place = placeAt(stands, unit, c * cell, r * cell);
      const needed = neededAt(wall, ways, unit, slack, place);
      const k = needed === undefined ? -1 : stock.findIndex((s) => s.length >= needed - 1e-9);
      if (needed === undefined || k < 0) continue;
      if (best === undefined || k < best.stock) best = { x: place.x, z: r * cell, stock: k, needed };
      const last = row.at(-1);
      if (last && last.to === c && last.stock === k) row[row.length - 1] = { ...last, to: c + 1 };
      else row.push({ from: c, to: c + 1, stock: k });
    }
    reached.push(row);
  }
  return { wall: wall.id, stands, cell, columns, rows: reached, ...(best ? { best } : {}) };
}

/** A place of the map: `along` is up the wall, or out from it where the unit stands just above the snow. */
export const placeAt = (stands: Place['stands'], unit: UnitBox, x: number, along: number): Place =>
  stands === 'wall' ? { stands, x, z: along, out: 0 } : { stands, x, z: unit.baseLeast, out: along };

/** m of line that a free place above the snow takes, slack counted; undefined for any other. */
export function neededAt(wall: Wall, ways: Ways, unit: UnitBox, slack: number, place: Place): number | undefined {
  if (place.z < unit.baseLeast - 1e-9 || fitsAt(wall, unit, place) !== 'yes') return undefined;
  const line = lineTo(ways, unit, place);
  return line === undefined ? undefined : wall.inside + line + slack;
}
