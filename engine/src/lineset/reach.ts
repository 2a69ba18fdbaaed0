import type { Reached, ReachMap, Stock, UnitBox, Wall } from './result.ts';
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

/** m of line on the wall to the pipes of a unit whose lower left corner lies at x and z; undefined where none leads. */
export function lineTo({ grid, steps }: Ways, unit: UnitBox, x: number, z: number): number | undefined {
  const at = cellAt(grid, x + unit.width, z + Math.min(pipesAt, unit.height / 2));
  const count = at === undefined ? -1 : (steps[at] ?? -1);
  return count < 0 ? undefined : count * cell;
}

/** What keeps a unit from a place: it must lie on the wall, cover nothing, and have its clearances. */
export function fitsAt(wall: Wall, unit: UnitBox, x: number, z: number): 'yes' | 'off-wall' | 'covers' | 'too-near' {
  if (x < -1e-9 || z < -1e-9 || x + unit.width > wall.width + 1e-9 || z + unit.height > wall.height + 1e-9)
    return 'off-wall';
  const clashes = (beside: number, above: number): boolean =>
    wall.things.some(
      (t) =>
        x - beside < t.x + t.width - 1e-9 &&
        x + unit.width + beside > t.x + 1e-9 &&
        z < t.z + t.height - 1e-9 &&
        z + unit.height + above > t.z + 1e-9,
    );
  if (clashes(0, 0)) return 'covers';
  return clashes(unit.beside, unit.above) ? 'too-near' : 'yes';
}

/**
 * Where a unit's lower left corner may lie on a wall, by the shortest stock length that reaches it with `slack` m in
 * hand. `stock` from short to long. Source: `lineset.way`.
 */
export function reachMap(wall: Wall, unit: UnitBox, stock: readonly Stock[], slack: number): ReachMap {
  const ways = waysOn(wall);
  const { columns, rows } = ways.grid;
  let best: ReachMap['best'];
  const reached: Reached[][] = [];
  for (let r = 0; r < rows; r++) {
    const row: Reached[] = [];
    for (let c = 0; c < columns; c++) {
      const needed = neededAt(wall, ways, unit, slack, c, r);
      const k = needed === undefined ? -1 : stock.findIndex((s) => s.length >= needed - 1e-9);
      if (needed === undefined || k < 0) continue;
      if (best === undefined || k < best.stock) best = { x: c * cell, z: r * cell, stock: k, needed };
      const last = row.at(-1);
      if (last && last.to === c && last.stock === k) row[row.length - 1] = { ...last, to: c + 1 };
      else row.push({ from: c, to: c + 1, stock: k });
    }
    reached.push(row);
  }
  return { wall: wall.id, cell, columns, rows: reached, ...(best ? { best } : {}) };
}

function neededAt(wall: Wall, ways: Ways, unit: UnitBox, slack: number, c: number, r: number): number | undefined {
  const [x, z] = [c * cell, r * cell];
  if (z < unit.baseLeast - 1e-9 || fitsAt(wall, unit, x, z) !== 'yes') return undefined;
  const line = lineTo(ways, unit, x, z);
  return line === undefined ? undefined : wall.inside + line + slack;
}
