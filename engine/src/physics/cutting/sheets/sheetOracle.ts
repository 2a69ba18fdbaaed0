import type { Asking, Pattern, PatternOracle } from '../cover/pattern.ts';
import type { Filled } from './fill.ts';
import type { Box, Flat, Fronts } from './fronts.ts';

export type SheetSizes = {
  readonly pieces: readonly Flat[];
  readonly stock: readonly { readonly w: number; readonly h: number }[];
  readonly kerf: number;
};

/** Counts that end a search: boxes joined in all, sets gone through in one question, patterns given back. */
export type SheetLimits = { readonly joins: number; readonly visits: number; readonly patterns: number };

/** Sets gone through once something better is known: the programme is better served by another round. */
const quickVisits = 2000;

/** Sets of more pieces are not laid out exactly: the work trebles with each. */
export const exactMost = 9;

type Ask = {
  readonly kind: number;
  readonly asking: Asking;
  /** Pieces by what they earn per area, the best first. */
  readonly order: readonly number[];
  readonly areas: readonly number[];
  readonly room: number;
};

/** Patterns of a sheet: sets of pieces that cuts which go through can free from it. */
export class SheetOracle implements PatternOracle {
  readonly sizes: SheetSizes;
  readonly fronts: Fronts;
  readonly limits: SheetLimits;
  /** Sheets already filled, which may hold more pieces than are laid out exactly. */
  readonly #filled: ReadonlyMap<string, Box>;

  constructor(sizes: SheetSizes, fronts: Fronts, limits: SheetLimits, filled: readonly Filled[]) {
    this.#filled = new Map(filled.map((f) => [`${f.kind}:${f.set.join()}`, f.box]));
    this.sizes = sizes;
    this.fronts = fronts;
    this.limits = limits;
  }

  /** The box of a set on that kind of sheet. */
  boxOn(kind: number, set: readonly number[]): Box | undefined {
    if (set.length > exactMost) return this.#filled.get(`${kind}:${set.join()}`);
    const s = this.sizes.stock[kind];
    return s && this.fronts.of(set).find((b) => b.w <= s.w && b.h <= s.h);
  }

  best: PatternOracle['best'] = (kind, asking, floor) => {
    const ask = this.#ask(kind, asking, (i) => (asking.prices[i] ?? 0) > 1e-12);
    const patterns: Pattern[] = [];
    const first = Math.max(floor, 0);
    let found = first;
    let open = 0;
    let visits = 0;
    const visit = (k0: number, set: number[], worth: number, room: number): void => {
      for (let k = k0; k < ask.order.length; k++) {
        const rest = this.#fractional(ask, k, room);
        if (worth + rest <= found + 1e-12) return;
        const most = patterns.length > 0 ? quickVisits : this.limits.visits;
        if (visits++ > most || this.fronts.joins() > this.limits.joins || set.length >= exactMost) {
          open = Math.max(open, worth + rest);
          return;
        }
        const i = ask.order[k] ?? 0;
        const next = this.#with(ask, set, i);
        if (!next || !this.boxOn(kind, next)) continue;
        const now = worth + (asking.prices[i] ?? 0);
        if (now > found + 1e-12) {
          found = now;
          patterns.push(this.#pattern(kind, next));
        }
        visit(k, next, now, room - (ask.areas[i] ?? 0));
      }
    };
    visit(0, [], 0, ask.room);
    return { patterns: patterns.slice(-12), upper: Math.max(found, open) };
  };

  all: PatternOracle['all'] = (kind, piece, asking, floor) => {
    const ask = this.#ask(kind, asking, () => true);
    const patterns: Pattern[] = [];
    let whole = true;
    let visits = 0;
    const visit = (k0: number, set: number[], worth: number, room: number): void => {
      if (worth >= floor && this.#isFull(ask, set, room)) patterns.push(this.#pattern(kind, set));
      for (let k = k0; k < ask.order.length; k++) {
        if (worth + this.#fractional(ask, k, room) < floor) return;
        if (
          visits++ > this.limits.visits ||
          patterns.length > this.limits.patterns ||
          this.fronts.joins() > this.limits.joins ||
          set.length >= exactMost
        ) {
          whole = false;
          return;
        }
        const i = ask.order[k] ?? 0;
        const next = this.#with(ask, set, i);
        if (!next || !this.boxOn(kind, next)) continue;
        visit(k, next, worth + (asking.prices[i] ?? 0), room - (ask.areas[i] ?? 0));
      }
    };
    if (this.boxOn(kind, [piece])) visit(0, [piece], asking.prices[piece] ?? 0, ask.room - (ask.areas[piece] ?? 0));
    return { patterns, whole };
  };

  #ask(kind: number, asking: Asking, wantedToo: (i: number) => boolean): Ask {
    const { pieces, stock, kerf } = this.sizes;
    const sheet = stock[kind] ?? { w: 0, h: 0 };
    const areas = pieces.map((p) => (p.w + kerf) * (p.h + kerf));
    const worth = (i: number) => (asking.prices[i] ?? 0) / (areas[i] ?? 1);
    const order = pieces
      .flatMap((_, i) => ((asking.wanted[i] ?? 0) > 0 && wantedToo(i) && this.boxOn(kind, [i]) ? [i] : []))
      .sort((a, b) => worth(b) - worth(a) || (areas[b] ?? 0) - (areas[a] ?? 0) || a - b);
    return { kind, asking, order, areas, room: (sheet.w + kerf) * (sheet.h + kerf) * (1 + 1e-12) };
  }

  /** What that much area can earn at most from this place in the order on. */
  #fractional(ask: Ask, from: number, room: number): number {
    let left = room;
    let sum = 0;
    for (let k = from; k < ask.order.length; k++) {
      const i = ask.order[k] ?? 0;
      const price = ask.asking.prices[i] ?? 0;
      const area = (ask.areas[i] ?? 0) * (ask.asking.wanted[i] ?? 0);
      if (area > left) return sum + (price * left) / (ask.areas[i] ?? 1);
      left -= area;
      sum += price * (ask.asking.wanted[i] ?? 0);
    }
    return sum;
  }

  /** The set with one more of that piece, in rising order; nothing where no more are wanted or there is no area left. */
  #with(ask: Ask, set: readonly number[], i: number): number[] | undefined {
    let have = 0;
    for (const j of set) if (j === i) have++;
    if (have >= (ask.asking.wanted[i] ?? 0)) return undefined;
    // Two pieces that share no sheet share none with others on it.
    for (const j of set) if (!this.boxOn(ask.kind, i < j ? [i, j] : [j, i])) return undefined;
    const next: number[] = [];
    let placed = false;
    for (const j of set) {
      if (!placed && i < j) {
        next.push(i);
        placed = true;
      }
      next.push(j);
    }
    if (!placed) next.push(i);
    return next;
  }

  #isFull(ask: Ask, set: readonly number[], room: number): boolean {
    return ask.order.every((i) => {
      if ((ask.areas[i] ?? 0) > room) return true;
      const next = this.#with(ask, set, i);
      return !next || next.length > exactMost || !this.boxOn(ask.kind, next);
    });
  }

  #pattern(kind: number, set: readonly number[]): Pattern {
    const counts = new Int32Array(this.sizes.pieces.length);
    for (const i of set) counts[i] = (counts[i] ?? 0) + 1;
    return { kind, counts };
  }
}
