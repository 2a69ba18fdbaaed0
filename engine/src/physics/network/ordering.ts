/** Where the entries of a factored matrix lie: row k has its diagonal and `columns[start[k]..start[k+1]]` right of it. */
export type Ordering = {
  /** Place in the elimination of each unknown. */
  readonly place: Int32Array;
  readonly start: Int32Array;
  readonly columns: Int32Array;
  /** Entry that each pair (x < y) of a row's entries fills or changes, row by row. */
  readonly pairs: Int32Array;
};

/**
 * Eliminates whichever unknown has the fewest neighbours left (ties by number), so that tree parts and pieces in
 * series cost one multiplication each and loops fill in little. `ends` are pairs of unknowns that a passage joins.
 */
export function order(n: number, ends: readonly (readonly [number, number])[]): Ordering {
  const words = (n + 31) >> 5;
  const near = new Uint32Array(n * words);
  const put = (i: number, j: number): void => {
    near[i * words + (j >> 5)] = (near[i * words + (j >> 5)] ?? 0) | (1 << (j & 31));
  };
  for (const [i, j] of ends)
    if (i !== j) {
      put(i, j);
      put(j, i);
    }
  const rows = eliminate(n, words, near);
  const place = new Int32Array(n);
  rows.forEach((r, k) => {
    place[r.pivot] = k;
  });
  return layOut(
    place,
    rows.map((r) => r.neighbours.map((v) => place[v] ?? 0).sort((a, b) => a - b)),
  );
}

type Pivot = { readonly pivot: number; readonly neighbours: readonly number[] };

function eliminate(n: number, words: number, near: Uint32Array): Pivot[] {
  const degree = new Int32Array(n);
  const count = (i: number): number => {
    let bits = 0;
    for (let w = 0; w < words; w++) for (let x = near[i * words + w] ?? 0; x !== 0; x &= x - 1) bits++;
    return bits;
  };
  for (let i = 0; i < n; i++) degree[i] = count(i);
  const gone = new Uint8Array(n);
  return Array.from({ length: n }, () => {
    let pivot = -1;
    for (let i = 0; i < n; i++) if (!gone[i] && (pivot < 0 || (degree[i] ?? 0) < (degree[pivot] ?? 0))) pivot = i;
    gone[pivot] = 1;
    const neighbours = membersOf(near, pivot, words);
    for (const v of neighbours) {
      // All neighbours of the one that goes become neighbours of each other.
      for (let w = 0; w < words; w++) near[v * words + w] = (near[v * words + w] ?? 0) | (near[pivot * words + w] ?? 0);
      for (const u of [v, pivot]) near[v * words + (u >> 5)] = (near[v * words + (u >> 5)] ?? 0) & ~(1 << (u & 31));
      degree[v] = count(v);
    }
    return { pivot, neighbours };
  });
}

function membersOf(near: Uint32Array, i: number, words: number): number[] {
  const found: number[] = [];
  for (let w = 0; w < words; w++)
    for (let x = near[i * words + w] ?? 0; x !== 0; x &= x - 1) found.push((w << 5) + 31 - Math.clz32(x & -x));
  return found;
}

function layOut(place: Int32Array, rows: readonly (readonly number[])[]): Ordering {
  const n = rows.length;
  const start = new Int32Array(n + 1);
  rows.forEach((r, k) => {
    start[k + 1] = (start[k] ?? 0) + r.length;
  });
  const columns = new Int32Array(start[n] ?? 0);
  rows.forEach((r, k) => {
    columns.set(r, start[k]);
  });
  const pairs: number[] = [];
  for (const r of rows)
    for (let x = 0; x < r.length; x++) {
      const i = r[x] ?? 0;
      // Both lists rise, so that one walk along row i finds all that follow.
      let at = start[i] ?? 0;
      for (let y = x + 1; y < r.length; y++) {
        while (columns[at] !== r[y]) at++;
        pairs.push(at);
      }
    }
  return { place, start, columns, pairs: Int32Array.from(pairs) };
}

/** The entry of row i at column j > i. */
export function entryAt(o: Pick<Ordering, 'start' | 'columns'>, i: number, j: number): number {
  const from = o.start[i] ?? 0;
  return from + o.columns.subarray(from, o.start[i + 1]).indexOf(j);
}
