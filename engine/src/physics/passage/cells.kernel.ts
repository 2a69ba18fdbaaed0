import { clearance } from './clearance.kernel.ts';
import { jammed } from './jammed.kernel.ts';
import type { Obstacles, Piece } from './obstacles.ts';

/** What is known of all poses in a cell. Everything else is `mixed`: nothing is known yet. */
export const mixed = 0;
export const free = 1;
export const stuck = 2;

/** How often a root cell may be halved. */
export const deepest = 13;
const fine = 1 << deepest;

/**
 * Poses (x, y, turn) as a forest of cells halved in all three ways, in flat arrays lent by `cellMemory`. A cell's least corner
 * is `ix, iy, it` in units of the finest cell; a rectangle looks the same after half a turn, where the turn closes in itself.
 */
export type Cells = {
  readonly obstacles: Obstacles;
  readonly piece: Piece;
  readonly x0: number;
  readonly y0: number;
  /** m, radians of one finest cell. */
  readonly unit: number;
  readonly unitTurn: number;
  readonly across: readonly [number, number, number];
  /** m by which no point of the piece moves within half a cell of a level. */
  readonly moves: Float64Array;
  readonly ix: Int32Array;
  readonly iy: Int32Array;
  readonly it: Int32Array;
  readonly child: Int32Array;
  readonly level: Uint8Array;
  readonly state: Uint8Array;
  readonly gap: Float64Array;
  readonly reached: Float64Array;
  readonly from: Int32Array;
  readonly stamp: Int32Array;
  readonly heap: Int32Array;
  readonly keys: Float64Array;
  readonly stack: Int32Array;
  count: number;
};

type Memory = Omit<Cells, 'obstacles' | 'piece' | 'x0' | 'y0' | 'unit' | 'unitTurn' | 'across' | 'moves' | 'count'>;

/** Arrays for `most` cells; they may be lent again to the next search. */
export const cellMemory = (most: number): Memory => ({
  ix: new Int32Array(most),
  iy: new Int32Array(most),
  it: new Int32Array(most),
  child: new Int32Array(most),
  level: new Uint8Array(most),
  state: new Uint8Array(most),
  gap: new Float64Array(most),
  reached: new Float64Array(most),
  from: new Int32Array(most),
  stamp: new Int32Array(most),
  heap: new Int32Array(2 * most),
  keys: new Float64Array(2 * most),
  stack: new Int32Array(8 * (deepest + 2)),
});

/** The box in which the piece's middle may be, m. */
export type Bounds = { readonly x0: number; readonly x1: number; readonly y0: number; readonly y1: number };

/** Root cells of about `size` m over the bounds and half a turn, all told what they are. Turn is scaled by the piece's reach. */
export function makeCells(memory: Memory, obstacles: Obstacles, piece: Piece, bounds: Bounds, size: number): Cells {
  const reach = Math.hypot(piece.a, piece.b);
  const nx = Math.max(1, Math.ceil((bounds.x1 - bounds.x0) / size));
  const ny = Math.max(1, Math.ceil((bounds.y1 - bounds.y0) / size));
  const nt = Math.max(4, Math.ceil((Math.PI * reach) / size));
  const unit = size / fine;
  const unitTurn = Math.PI / nt / fine;
  const moves = Float64Array.from(
    { length: deepest + 1 },
    (_, l) => (Math.SQRT2 * unit + reach * unitTurn) * (fine >> l) * 0.5 + 2e-7,
  );
  const cells: Cells = {
    ...memory,
    obstacles,
    piece,
    ...bounds,
    unit,
    unitTurn,
    across: [nx, ny, nt],
    moves,
    count: 0,
  };
  memory.stamp.fill(0);
  for (let t = 0; t < nt; t++)
    for (let y = 0; y < ny; y++) for (let x = 0; x < nx; x++) addCell(cells, 0, x * fine, y * fine, t * fine);
  return cells;
}

function addCell(c: Cells, level: number, ix: number, iy: number, it: number): void {
  const i = c.count++;
  const half = (fine >> level) * 0.5;
  const turn = (it + half) * c.unitTurn;
  const move = c.moves[level] as number;
  const { a, b } = c.piece;
  const x = c.x0 + (ix + half) * c.unit;
  const y = c.y0 + (iy + half) * c.unit;
  const gap = clearance(c.obstacles, x, y, Math.cos(turn), Math.sin(turn), a, b, -move);
  c.ix[i] = ix;
  c.iy[i] = iy;
  c.it[i] = it;
  c.level[i] = level;
  c.child[i] = 0;
  c.stamp[i] = 0;
  c.gap[i] = gap;
  c.state[i] = gap > move ? free : gap < -move || jams(c, x, y, turn, half) ? stuck : mixed;
}

/** Half the finest cells' units: what can move from a cell's middle is its half diagonal and half its turn, and a hair. */
function jams({ obstacles, piece, unit, unitTurn }: Cells, x: number, y: number, turn: number, half: number): boolean {
  const { a, b } = piece;
  const flat = Math.SQRT2 * half * unit + 1e-9;
  return jammed(obstacles, x, y, Math.cos(turn), Math.sin(turn), a, b, flat, half * unitTurn + 1e-9);
}

/** Halves a cell in all three ways: eight children, one after the other. */
export function split(c: Cells, i: number): void {
  const level = (c.level[i] as number) + 1;
  const size = fine >> level;
  const ix = c.ix[i] as number;
  const iy = c.iy[i] as number;
  const it = c.it[i] as number;
  c.child[i] = c.count;
  for (let k = 0; k < 8; k++) addCell(c, level, ix + (k & 1) * size, iy + ((k >> 1) & 1) * size, it + (k >> 2) * size);
}

/** The cell that holds a finest place, no deeper than `most`; -1 outside. */
export function cellAt(c: Cells, x: number, y: number, t: number, most: number): number {
  const [nx, ny, nt] = c.across;
  const turn = t < 0 ? t + nt * fine : t >= nt * fine ? t - nt * fine : t;
  if (x < 0 || y < 0 || x >= nx * fine || y >= ny * fine) return -1;
  let i = ((turn >> deepest) * ny + (y >> deepest)) * nx + (x >> deepest);
  for (let l = 0; l < most; l++) {
    const first = c.child[i] as number;
    if (first === 0) return i;
    const bit = deepest - 1 - l;
    i = first + ((x >> bit) & 1) + 2 * ((y >> bit) & 1) + 4 * ((turn >> bit) & 1);
  }
  return i;
}

/** The leaf that holds a pose; -1 outside the bounds. */
export function leafOf(c: Cells, x: number, y: number, turn: number): number {
  const whole = c.across[2] * fine;
  const t = Math.floor(turn / c.unitTurn) % whole;
  return cellAt(c, Math.floor((x - c.x0) / c.unit), Math.floor((y - c.y0) / c.unit), t < 0 ? t + whole : t, deepest);
}

export const sizeOf = (c: Cells, i: number): number => fine >> (c.level[i] as number);
