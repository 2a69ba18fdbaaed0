import { type Box, type Flat, joined, pieceBox } from './fronts.ts';

/** Free space on a sheet, or a piece in its corner with the space beside and above it. */
type Space = {
  readonly w: number;
  readonly h: number;
  piece: number;
  turned: boolean;
  /** The space beside reaches up over the piece only. */
  low: boolean;
  beside: Space | undefined;
  above: Space | undefined;
};

const freeSpace = (w: number, h: number): Space => ({
  w,
  h,
  piece: -1,
  turned: false,
  low: true,
  beside: undefined,
  above: undefined,
});

export type FillStock = { readonly w: number; readonly h: number; readonly cost: number; readonly count: number };
export type Filled = { readonly kind: number; readonly set: readonly number[]; readonly box: Box };

/** Rules of one run: which free space is tried first, and which way its rest is divided. */
export type FillRule = { readonly fit: 'area' | 'side'; readonly divide: 'short' | 'long' | 'whole' | 'even' };

export const fillRules: readonly FillRule[] = (['area', 'side'] as const).flatMap((fit) =>
  (['short', 'long', 'whole', 'even'] as const).map((divide) => ({ fit, divide })),
);

type Sheet = { readonly kind: number; readonly root: Space; readonly free: Space[]; readonly set: number[] };

function* ways(p: Flat): Generator<readonly [number, number, boolean]> {
  yield [p.w, p.h, false];
  if (p.turns && p.w !== p.h) yield [p.h, p.w, true];
}

const lowRest = (s: Space, w: number, h: number, kerf: number, divide: FillRule['divide']): boolean => {
  const [right, top] = [s.w - w - kerf, s.h - h - kerf];
  if (divide === 'short') return right < top;
  if (divide === 'long') return right >= top;
  // The larger single rest, or the more even two.
  const large = Math.max(right * h, s.w * top) >= Math.max(right * s.h, w * top);
  return divide === 'whole' ? large : !large;
};

/** Puts a piece into a free space's corner and frees what is beside and above. */
function put(
  sheet: Sheet,
  s: Space,
  i: number,
  [w, h, turned]: readonly [number, number, boolean],
  kerf: number,
  divide: FillRule['divide'],
): void {
  s.piece = i;
  s.turned = turned;
  s.low = lowRest(s, w, h, kerf, divide);
  const [right, top] = [s.w - w - kerf, s.h - h - kerf];
  if (right > 0) s.beside = freeSpace(right, s.low ? h : s.h);
  if (top > 0) s.above = freeSpace(s.low ? s.w : w, top);
  sheet.free.splice(sheet.free.indexOf(s), 1, ...[s.beside, s.above].filter((x) => x !== undefined));
  sheet.set.push(i);
}

/** The space's pieces as one box, the smallest that its cuts allow. */
function boxOf(s: Space | undefined, pieces: readonly Flat[], kerf: number): Box | undefined {
  const p = s && pieces[s.piece];
  if (!s || !p) return undefined;
  const piece = pieceBox(p, s.piece, s.turned);
  const [beside, above] = [boxOf(s.beside, pieces, kerf), boxOf(s.above, pieces, kerf)];
  const [inner, outer] = s.low ? [beside, above] : [above, beside];
  const first = inner ? joined(piece, inner, s.low, kerf) : piece;
  return outer ? joined(first, outer, !s.low, kerf) : first;
}

/** Puts pieces one after the other where they fit best by the rule; opens the stock that is cheapest for its area. */
export function fillSheets(
  pieces: readonly Flat[],
  order: readonly number[],
  stock: readonly FillStock[],
  kerf: number,
  rule: FillRule,
): { readonly sheets: readonly Filled[]; readonly missing: number } {
  const sheets: Sheet[] = [];
  const left = stock.map((s) => s.count);
  const cheapest = stock.map((_, k) => k).sort((a, b) => worthOf(stock[a]) - worthOf(stock[b]) || a - b);
  let missing = 0;
  for (const i of order) {
    const p = pieces[i];
    if (!p) continue;
    const place = bestPlace(sheets, p, rule) ?? opened(sheets, p, stock, left, cheapest);
    if (place) put(place.sheet, place.space, i, place.way, kerf, rule.divide);
    else missing++;
  }
  const filled = sheets.flatMap(({ kind, root, set }): Filled[] => {
    const box = boxOf(root, pieces, kerf);
    return box ? [{ kind, set: set.sort((a, b) => a - b), box }] : [];
  });
  return { sheets: filled, missing };
}

const worthOf = (s: FillStock | undefined): number => (s ? s.cost / (s.w * s.h) : Infinity);

type Place = { readonly sheet: Sheet; readonly space: Space; readonly way: readonly [number, number, boolean] };

function bestPlace(sheets: readonly Sheet[], p: Flat, rule: FillRule): Place | undefined {
  let best = Infinity;
  let place: Place | undefined;
  for (const sheet of sheets)
    for (const space of sheet.free)
      for (const way of ways(p)) {
        const [w, h] = way;
        if (w > space.w || h > space.h) continue;
        const score = rule.fit === 'area' ? space.w * space.h - w * h : Math.min(space.w - w, space.h - h);
        if (score < best) {
          best = score;
          place = { sheet, space, way };
        }
      }
  return place;
}

function opened(
  sheets: Sheet[],
  p: Flat,
  stock: readonly FillStock[],
  left: number[],
  cheapest: readonly number[],
): Place | undefined {
  for (const kind of cheapest) {
    const s = stock[kind];
    if (!s || (left[kind] ?? 0) < 1) continue;
    for (const way of ways(p)) {
      if (way[0] > s.w || way[1] > s.h) continue;
      left[kind] = (left[kind] ?? 0) - 1;
      const root = freeSpace(s.w, s.h);
      const sheet: Sheet = { kind, root, free: [root], set: [] };
      sheets.push(sheet);
      return { sheet, space: root, way };
    }
  }
  return undefined;
}
