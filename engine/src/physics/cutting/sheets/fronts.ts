/** A piece, or two boxes beside or above each other with the kerf between: what cuts that go through can make. Whole lengths. */
export type Box = {
  readonly w: number;
  readonly h: number;
  /** The piece, or -1. */
  readonly piece: number;
  readonly turned: boolean;
  /** `second` to the right of `first`; else above it. */
  readonly beside: boolean;
  readonly first: Box | undefined;
  readonly second: Box | undefined;
};

/** A piece's sides; `turns` where it may be laid either way. */
export type Flat = { readonly w: number; readonly h: number; readonly turns: boolean };

export const pieceBox = ({ w, h }: Flat, piece: number, turned: boolean): Box => ({
  w: turned ? h : w,
  h: turned ? w : h,
  piece,
  turned,
  beside: false,
  first: undefined,
  second: undefined,
});

export const joined = (first: Box, second: Box, beside: boolean, kerf: number): Box => ({
  w: beside ? first.w + kerf + second.w : Math.max(first.w, second.w),
  h: beside ? Math.max(first.h, second.h) : first.h + kerf + second.h,
  piece: -1,
  turned: false,
  beside,
  first,
  second,
});

/** Makes room for a box in a front: false where one in it is no wider and no higher; those it makes needless go. */
function take(front: Box[], w: number, h: number): boolean {
  for (const b of front) if (b.w <= w && b.h <= h) return false;
  let n = 0;
  for (const b of front) if (b.w < w || b.h < h) front[n++] = b;
  front.length = n;
  return true;
}

export type Fronts = {
  /** The smallest boxes of a set, its pieces in rising order; none where it fits no sheet. */
  readonly of: (set: readonly number[]) => readonly Box[];
  /** Pairs of boxes joined so far: a measure of work that is the same on every machine. */
  readonly joins: () => number;
};

const none: readonly Box[] = [];
const keptMost = 600_000;
const whole = 2 ** 53;

export type FrontSpec = {
  readonly pieces: readonly Flat[];
  readonly kerf: number;
  /** The widest and the highest of the sheets. */
  readonly most: { readonly w: number; readonly h: number };
  /** Shares of a sheet by piece, of which a set that fits any sheet has at most 1 in sum. */
  readonly shares: readonly Float64Array[];
  /** Most pieces of a set. */
  readonly setMost: number;
};

/** Tells the chosen ones of a set from those of any other by one number, exact below 2^53. */
const numberOf =
  (base: number) =>
  (set: readonly number[], mask: number): number => {
    let key = 0;
    for (let k = 0; k < set.length; k++) if (mask & (1 << k)) key = key * base + (set[k] ?? 0) + 1;
    return key;
  };

/** The same by a text, for many sorts of pieces. */
const textOf = (set: readonly number[], mask: number): string => {
  let key = '';
  for (let k = 0; k < set.length; k++) if (mask & (1 << k)) key += String.fromCharCode(set[k] ?? 0);
  return key;
};

/** A piece by itself, both ways where it turns. */
const singles = (pieces: readonly Flat[], i: number): Box[] => {
  const p = pieces[i];
  if (!p) return [];
  const straight = pieceBox(p, i, false);
  return p.turns && p.w !== p.h ? [straight, pieceBox(p, i, true)] : [straight];
};

/**
 * Every way to cut a set from a sheet: a set's boxes are those of any two parts of it, beside or above each other. A box
 * neither narrower nor lower than another is dropped, which loses nothing. Free number of stages.
 */
export function frontsOf({ pieces, kerf, most, shares, setMost }: FrontSpec): Fronts {
  const base = pieces.length + 1;
  // Sets are told apart by one number where it stays exact, else by a text.
  const numbered = base ** setMost < whole;
  const known = new Map<number | string, readonly Box[]>();
  let joins = 0;

  const keyOf = numbered ? numberOf(base) : textOf;

  const meet = (front: Box[], a: readonly Box[], b: readonly Box[]): void => {
    joins += a.length * b.length;
    for (const p of a)
      for (const q of b) {
        const w = p.w + kerf + q.w;
        const h = p.h + kerf + q.h;
        if (w <= most.w && take(front, w, Math.max(p.h, q.h))) front.push(joined(p, q, true, kerf));
        if (h <= most.h && take(front, Math.max(p.w, q.w), h)) front.push(joined(p, q, false, kerf));
      }
  };

  const tooMuch = (set: readonly number[]): boolean => {
    for (const share of shares) {
      let sum = 0;
      for (const i of set) sum += share[i] ?? 0;
      if (sum > 1 + 1e-9) return true;
    }
    return false;
  };

  const part = (set: readonly number[], mask: number): readonly Box[] => {
    const key = keyOf(set, mask);
    return (
      known.get(key) ??
      find(
        key,
        set.filter((_, k) => mask & (1 << k)),
      )
    );
  };

  const boxesOf = (set: readonly number[]): readonly Box[] => {
    if (set.length === 1) return singles(pieces, set[0] ?? 0).filter((b) => b.w <= most.w && b.h <= most.h);
    if (tooMuch(set)) return none;
    const front: Box[] = [];
    const all = 2 ** set.length - 1;
    // Two that do not go together keep the whole from it: sets without one piece are looked at before they are joined.
    if (set.length > 2) for (let k = 0; k < set.length; k++) if (part(set, all ^ (1 << k)).length === 0) return none;
    // The first piece stays in the first part, so that no split is met twice.
    for (let mask = 1; mask < all; mask += 2) meet(front, part(set, mask), part(set, all ^ mask));
    return front;
  };

  const find = (key: number | string, set: readonly number[]): readonly Box[] => {
    joins++;
    const front = boxesOf(set);
    if (known.size < keptMost) known.set(key, front);
    return front;
  };

  const of = (set: readonly number[]): readonly Box[] => part(set, 2 ** set.length - 1);
  return { of, joins: () => joins };
}
