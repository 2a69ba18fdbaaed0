import type { LaidPiece, StartTable, WorkLayout } from './layout.ts';
import { startTable } from './tables.kernel.ts';

/**
 * Lays out pieces for the loops. `after` points at pieces by their place in the list and must hold no circle (see
 * `circleIn`). A last piece is added: the end of all work. `missing` [m][horizon + 1] are units that are not there.
 */
export function layWork(
  pieces: readonly LaidPiece[],
  capacity: readonly number[],
  horizon: number,
  missing?: Int32Array,
): WorkLayout {
  const open = new Uint8Array(horizon + 1).fill(60);
  const end: LaidPiece = {
    length: 0,
    table: startTable(open, 0, horizon),
    needs: [],
    after: pieces.map((_, piece) => ({ piece, lag: 0 })),
  };
  const all = [...pieces, end];
  const n = all.length;
  const m = capacity.length;
  const needs = all.map((p) => (p.length > 0 ? p.needs.filter((x) => x.units > 0) : []));
  const before = all.map((p) => p.after);
  const after: { piece: number; lag: number }[][] = all.map(() => []);
  before.forEach((list, j) => {
    for (const { piece, lag } of list) after[piece]?.push({ piece: j, lag });
  });
  const arcsBefore = flat(before);
  const arcsAfter = flat(after);
  return {
    n,
    horizon,
    m,
    capacity: Int32Array.from(capacity),
    base: missing ?? new Int32Array(m * (horizon + 1)),
    length: Int32Array.from(all, (p) => p.length),
    classes: [...new Set<StartTable>(all.map((p) => p.table))],
    table: all.map((p) => p.table),
    needFrom: offsets(needs),
    needOf: Int32Array.from(needs.flat(), (x) => x.of),
    needUnits: Int32Array.from(needs.flat(), (x) => x.units),
    beforeFrom: offsets(before),
    before: arcsBefore.piece,
    beforeLag: arcsBefore.lag,
    afterFrom: offsets(after),
    after: arcsAfter.piece,
    afterLag: arcsAfter.lag,
    release: Int32Array.from(all, (p) => Math.max(0, p.release ?? 0)),
    due: Int32Array.from(all, (p) => Math.min(horizon, p.due ?? horizon)),
    order: rankOrder(before, after),
    priority: Float64Array.from(all, (p) => p.priority ?? 0),
  };
}

function offsets(lists: readonly (readonly unknown[])[]): Int32Array {
  const from = new Int32Array(lists.length + 1);
  lists.forEach((l, i) => {
    from[i + 1] = (from[i] ?? 0) + l.length;
  });
  return from;
}

type Arc = { readonly piece: number; readonly lag: number };
const flat = (lists: readonly (readonly Arc[])[]) => ({
  piece: Int32Array.from(lists.flat(), (a) => a.piece),
  lag: Int32Array.from(lists.flat(), (a) => a.lag),
});

/** Pieces, each after what comes before it; what lies in a circle is left out. */
function rankOrder(before: readonly (readonly Arc[])[], after: readonly (readonly Arc[])[]): Int32Array {
  const open = before.map((l) => l.length);
  const order = open.flatMap((k, i) => (k === 0 ? [i] : []));
  for (let at = 0; at < order.length; at++)
    for (const { piece } of after[order[at] ?? 0] ?? []) {
      const left = (open[piece] ?? 0) - 1;
      open[piece] = left;
      if (left === 0) order.push(piece);
    }
  return Int32Array.from(order);
}

/** A circle told from its first member in the list on. */
function turned(circle: number[]): number[] {
  const at = circle.indexOf(Math.min(...circle));
  return [...circle.slice(at), ...circle.slice(0, at)];
}

/** Pieces that wait for each other in a circle, in their order; empty where there is none. */
export function circleIn(after: readonly (readonly number[])[]): number[] {
  const state = new Uint8Array(after.length);
  const way: number[] = [];
  const visit = (i: number): number[] => {
    state[i] = 1;
    way.push(i);
    for (const j of after[i] ?? []) {
      if (state[j] === 1) return way.slice(way.indexOf(j));
      if (state[j] === 0) {
        const found = visit(j);
        if (found.length > 0) return found;
      }
    }
    way.pop();
    state[i] = 2;
    return [];
  };
  for (let i = 0; i < after.length; i++) {
    if (state[i] !== 0) continue;
    const found = visit(i);
    if (found.length > 0) return turned(found.reverse());
  }
  return [];
}
