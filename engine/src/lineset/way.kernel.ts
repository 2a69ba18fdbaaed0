import type { WallGrid } from './wallGrid.ts';

/** Cells by which a way leaves one: left, right, down, up are looked at one after the other. */
const unreached = -1;

/**
 * Steps from the cell `from` to each cell along straight stretches, level and upright, round what is in the way; -1
 * where no way leads. `queue` has room for every cell. The first cell counts as free: the line comes out there.
 */
export function stepsFrom(grid: WallGrid, from: number, steps: Int32Array, queue: Int32Array): void {
  const { columns, rows, blocked } = grid;
  steps.fill(unreached);
  steps[from] = 0;
  queue[0] = from;
  let read = 0;
  let written = 1;
  while (read < written) {
    const at = queue[read++]!;
    const next = steps[at]! + 1;
    const column = at % columns;
    const row = (at - column) / columns;
    for (let side = 0; side < 4; side++) {
      const to = side === 0 ? at - 1 : side === 1 ? at + 1 : side === 2 ? at - columns : at + columns;
      const on = side === 0 ? column > 0 : side === 1 ? column < columns - 1 : side === 2 ? row > 0 : row < rows - 1;
      if (!on || steps[to] !== unreached || blocked[to] === 1) continue;
      steps[to] = next;
      queue[written++] = to;
    }
  }
}
