import type { Wall } from './result.ts';

/** m of a cell's side. */
export const cell = 0.05;

/** A wall cut into square cells; `blocked` is 1 where something stands in the line's way. Row 0 lies at the ground. */
export type WallGrid = { readonly columns: number; readonly rows: number; readonly blocked: Uint8Array };

/** Cells of a wall, with `around` m kept free round whatever is on it. */
export function wallGrid(wall: Wall, around: number): WallGrid {
  const columns = Math.max(1, Math.floor(wall.width / cell + 1e-9));
  const rows = Math.max(1, Math.floor(wall.height / cell + 1e-9));
  const blocked = new Uint8Array(columns * rows);
  for (const thing of wall.things) {
    const [left, right] = span(thing.x - around, thing.x + thing.width + around, columns);
    const [low, high] = span(thing.z - around, thing.z + thing.height + around, rows);
    for (let r = low; r < high; r++) blocked.fill(1, r * columns + left, r * columns + Math.max(left, right));
  }
  return { columns, rows, blocked };
}

/** Cells that a stretch touches. */
function span(from: number, to: number, count: number): [number, number] {
  const at = (x: number) => Math.min(count, Math.max(0, x));
  return [at(Math.floor(from / cell + 1e-9)), at(Math.ceil(to / cell - 1e-9))];
}

/** The cell that a place lies in, or undefined off the wall. */
export function cellAt({ columns, rows }: WallGrid, x: number, z: number): number | undefined {
  const [c, r] = [Math.floor(x / cell + 1e-9), Math.floor(z / cell + 1e-9)];
  return c < 0 || r < 0 || c >= columns || r >= rows ? undefined : r * columns + c;
}
