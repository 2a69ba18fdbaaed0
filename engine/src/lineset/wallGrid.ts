import type { Wall } from './result.ts';

/** m of a cell's side. */
export const cell = 0.025;

/**
 * A wall with the ground before it, unfolded and cut into square cells: `ground` rows of ground first, the farthest out
 * lowest, then the wall from its foot up. `blocked` is 1 where something stands in the line's way.
 */
export type WallGrid = {
  readonly columns: number;
  readonly rows: number;
  readonly ground: number;
  readonly blocked: Uint8Array;
};

/** Cells of a wall and its ground, with `around` m kept free round whatever is on them. */
export function wallGrid(wall: Wall, around: number): WallGrid {
  const columns = Math.max(1, countOf(wall.width));
  const ground = countOf(wall.ground.depth);
  const rows = ground + Math.max(1, countOf(wall.height));
  const blocked = new Uint8Array(columns * rows);
  const block = (x: number, width: number, z: number, height: number): void => {
    const [left, right] = span(x - around, x + width + around, columns, 0);
    const [low, high] = span(z - around, z + height + around, rows, ground);
    for (let r = low; r < high; r++) blocked.fill(1, r * columns + left, r * columns + Math.max(left, right));
  };
  for (const { x, width, z, height } of wall.things) block(x, width, z, height);
  for (const { kind, x, width, out, depth } of wall.ground.things)
    if (kind !== 'soft') block(x, width, -out - depth, depth);
  return { columns, rows, ground, blocked };
}

const countOf = (length: number): number => Math.floor(length / cell + 1e-9);

/** Cells that a stretch touches, counted from `origin`. */
function span(from: number, to: number, count: number, origin: number): [number, number] {
  const at = (x: number) => Math.min(count, Math.max(0, origin + x));
  return [at(Math.floor(from / cell + 1e-9)), at(Math.ceil(to / cell - 1e-9))];
}

/** The cell that a place lies in, or undefined off wall and ground; `z` below 0 is out from the wall. */
export function cellAt({ columns, rows, ground }: WallGrid, x: number, z: number): number | undefined {
  const [c, r] = [Math.floor(x / cell + 1e-9), ground + Math.floor(z / cell + 1e-9)];
  return c < 0 || r < 0 || c >= columns || r >= rows ? undefined : r * columns + c;
}
