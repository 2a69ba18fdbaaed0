/**
 * The linear programme over the patterns known so far: least cost of patterns that give every kind of piece its number,
 * within the stock there is. Rows: pieces (at least `rhs`), then stock with a limit (at most `rhs`). Column i of the first
 * `pieces` ones leaves one piece out, at a cost beyond all others, so that there always is a basis.
 * Revised simplex with an explicit inverse. Solutions are guides: what is claimed is computed again from the prices.
 */
export type Master = {
  readonly pieces: number;
  readonly rows: number;
  readonly rhs: Float64Array;
  /** Columns by rows: `start[j]` to `start[j + 1]` of `index` and `value`. */
  readonly cost: Float64Array;
  readonly start: Int32Array;
  readonly index: Int32Array;
  readonly value: Float64Array;
  columns: number;
  /** Column in each place of the basis; -1 - i is the slack of row i. */
  readonly basis: Int32Array;
  readonly inverse: Float64Array;
  readonly x: Float64Array;
  readonly prices: Float64Array;
  readonly step: Float64Array;
};

const tiny = 1e-9;

/** An empty programme with room for so many columns of so many entries. `leftOut`: cost of a piece left out. */
export function masterOf(
  demand: Int32Array,
  limits: Float64Array,
  leftOut: number,
  room: { readonly columns: number; readonly entries: number },
): Master {
  const pieces = demand.length;
  const rows = pieces + limits.length;
  const m: Master = {
    pieces,
    rows,
    rhs: new Float64Array(rows),
    cost: new Float64Array(pieces + room.columns),
    start: new Int32Array(pieces + room.columns + 1),
    index: new Int32Array(pieces + room.entries),
    value: new Float64Array(pieces + room.entries),
    columns: pieces,
    basis: new Int32Array(rows),
    inverse: new Float64Array(rows * rows),
    x: new Float64Array(rows),
    prices: new Float64Array(rows),
    step: new Float64Array(rows),
  };
  for (let i = 0; i < rows; i++) {
    // Programmes of covers are degenerate: a hair on each row keeps the steps from going round in a circle.
    m.rhs[i] = i >= pieces ? limits[i - pieces]! : demand[i]! > 0 ? demand[i]! + 1e-7 * (1 + ((7 * i) % 11)) : 0;
    m.basis[i] = i < pieces ? i : -1 - i;
    m.inverse[i * rows + i] = 1;
    m.x[i] = m.rhs[i]!;
    if (i < pieces) {
      m.cost[i] = leftOut;
      m.index[i] = i;
      m.value[i] = 1;
      m.start[i + 1] = i + 1;
    }
  }
  return m;
}

/** Adds a pattern's column: `counts` cut down to what is still wanted. Row of its stock, or -1. False where no room is left. */
export function addColumn(m: Master, cost: number, counts: Int32Array, wanted: Int32Array, stockRow: number): boolean {
  const j = m.columns;
  let k = m.start[j]!;
  if (j + 1 >= m.start.length || k + m.rows > m.index.length) return false;
  for (let i = 0; i < m.pieces; i++) {
    const n = Math.min(counts[i]!, wanted[i]!);
    if (n > 0) {
      m.index[k] = i;
      m.value[k++] = n;
    }
  }
  if (stockRow >= 0) {
    m.index[k] = stockRow;
    m.value[k++] = 1;
  }
  m.cost[j] = cost;
  m.start[j + 1] = k;
  m.columns = j + 1;
  return true;
}

const costOf = (m: Master, column: number): number => (column < 0 ? 0 : m.cost[column]!);

function priceRows(m: Master): void {
  const { rows, inverse, prices } = m;
  prices.fill(0);
  for (let i = 0; i < rows; i++) {
    const c = costOf(m, m.basis[i]!);
    if (c === 0) continue;
    for (let k = 0; k < rows; k++) prices[k]! += c * inverse[i * rows + k]!;
  }
}

/** Column that lowers the cost fastest; -1 - i the slack of row i; NaN none. */
function entering(m: Master): number {
  let best = -tiny;
  let found = Number.NaN;
  for (let j = 0; j < m.columns; j++) {
    let d = m.cost[j]!;
    for (let k = m.start[j]!; k < m.start[j + 1]!; k++) d -= m.prices[m.index[k]!]! * m.value[k]!;
    if (d < best) {
      best = d;
      found = j;
    }
  }
  for (let i = 0; i < m.rows; i++) {
    const d = i < m.pieces ? m.prices[i]! : -m.prices[i]!;
    if (d < best) {
      best = d;
      found = -1 - i;
    }
  }
  return found;
}

function direction(m: Master, column: number): void {
  const { rows, inverse, step } = m;
  step.fill(0);
  if (column < 0) {
    const row = -1 - column;
    const sign = row < m.pieces ? -1 : 1;
    for (let i = 0; i < rows; i++) step[i] = sign * inverse[i * rows + row]!;
    return;
  }
  for (let k = m.start[column]!; k < m.start[column + 1]!; k++) {
    const v = m.value[k]!;
    const row = m.index[k]!;
    for (let i = 0; i < rows; i++) step[i]! += v * inverse[i * rows + row]!;
  }
}

function leaving(m: Master): number {
  let least = Infinity;
  let found = -1;
  for (let i = 0; i < m.rows; i++) {
    if (m.step[i]! <= tiny) continue;
    const ratio = m.x[i]! / m.step[i]!;
    if (ratio < least - 1e-12 || (ratio < least + 1e-12 && m.step[i]! > m.step[found]!)) {
      least = ratio;
      found = i;
    }
  }
  return found;
}

function pivot(m: Master, row: number, column: number): void {
  const { rows, inverse, step, x } = m;
  const inv = 1 / step[row]!;
  for (let k = 0; k < rows; k++) inverse[row * rows + k]! *= inv;
  x[row]! *= inv;
  for (let i = 0; i < rows; i++) {
    const f = step[i]!;
    if (i === row || f === 0) continue;
    for (let k = 0; k < rows; k++) inverse[i * rows + k]! -= f * inverse[row * rows + k]!;
    x[i] = Math.max(0, x[i]! - f * x[row]!);
  }
  m.basis[row] = column;
}

/** Goes on from where it stands to the least cost, at most so many steps. Prices and `x` are then those of the basis. */
export function solveMaster(m: Master, stepsMost: number): boolean {
  for (let n = 0; n < stepsMost; n++) {
    priceRows(m);
    const column = entering(m);
    if (Number.isNaN(column)) return true;
    direction(m, column);
    const row = leaving(m);
    if (row < 0) return false;
    pivot(m, row, column);
  }
  priceRows(m);
  return false;
}
