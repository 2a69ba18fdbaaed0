import type { Opening, Side } from '../../physics/cutting/index.ts';
import { inch } from '../../physics/exact.ts';
import type { BoxHole } from './result.ts';

/** m from the unit's outlet to the first take-off; between holes and to edges. Sources: `air.plenum`, `cutting.spacing` (common practice). */
const outletClear = 18 * inch;
const between = 2 * inch;
/** Places are worked out to an eighth of an inch. */
const step = inch / 8;

type Where = Side | 'end';

/** Something that leaves a box: its inside size, and what is said of its place. */
export type Leaving = {
  readonly id: string;
  readonly name: string;
  readonly shape: { readonly diameter: number } | { readonly width: number; readonly height: number };
  readonly side?: Where;
  readonly along?: number;
  readonly across?: number;
  /** Side and rank along the box as the plan is drawn. */
  readonly drawn?: { readonly side: Where; readonly along: number };
};

type Size = { readonly width: number; readonly height: number; readonly length: number };

/** A hole's shape as it lies in that side: a duct's width runs along the box in its left and right sides. */
function shapeIn(side: Where, { shape }: Leaving): Opening['shape'] {
  if ('diameter' in shape) return { kind: 'round', diameter: shape.diameter };
  const standing = side === 'left' || side === 'right';
  return standing
    ? { kind: 'rectangle', width: shape.height, height: shape.width }
    : { kind: 'rectangle', width: shape.width, height: shape.height };
}

const alongOf = (shape: Opening['shape']): number => (shape.kind === 'round' ? shape.diameter : shape.height);
const acrossOf = (side: Where, box: Size): number => (side === 'left' || side === 'right' ? box.height : box.width);

/** Sides: as entered, as drawn, else left and right in turn; the far end takes one duct only. */
function sided(
  leaving: readonly Leaving[],
): { readonly x: Leaving; readonly side: Where; readonly how: BoxHole['side'] }[] {
  let turn = 0;
  let endTaken = leaving.some((x) => x.side === 'end');
  return leaving.map((x) => {
    if (x.side !== undefined) return { x, side: x.side, how: 'entered' as const };
    const drawn = x.drawn?.side;
    if (drawn !== undefined && !(drawn === 'end' && endTaken)) {
      endTaken ||= drawn === 'end';
      return { x, side: drawn, how: 'drawn' as const };
    }
    return { x, side: turn++ % 2 === 0 ? ('left' as const) : ('right' as const), how: 'in-turn' as const };
  });
}

export type Placed = {
  readonly openings: readonly Opening[];
  readonly holes: readonly BoxHole[];
  readonly unplaced: readonly { readonly id: string; readonly name: string }[];
};

/**
 * Holes for all that leaves a box, m inside it. What is entered stays; the rest of a side is spread in the order drawn, behind
 * the outlet's clear stretch where `atUnit` and there is room, else as far back as they go (`short`). What finds no room is
 * named in `unplaced` and has no hole.
 */
export function placeTakeOffs(leaving: readonly Leaving[], box: Size, atUnit: boolean): Placed {
  const all = sided(leaving);
  const openings: Opening[] = [];
  const holes: BoxHole[] = [];
  const unplaced: { id: string; name: string }[] = [];
  for (const side of ['left', 'bottom', 'right', 'top', 'end'] as const) {
    const mine = all.filter((a) => a.side === side);
    const put = (a: (typeof mine)[number], along: number, short: boolean): void => {
      const across = a.x.across ?? acrossOf(side, box) / 2;
      openings.push({ id: a.x.id, side, along, across, shape: shapeIn(side, a.x) });
      const place = a.x.along === undefined ? 'worked-out' : 'entered';
      holes.push({ id: a.x.id, name: a.x.name, side: a.how, place, short });
    };
    if (side === 'end') {
      for (const a of mine) put(a, a.x.along ?? box.height / 2, false);
      continue;
    }
    const given = mine.filter((a) => a.x.along !== undefined);
    for (const a of given) {
      const along = a.x.along ?? 0;
      put(a, along, atUnit && along - alongOf(shapeIn(side, a.x)) / 2 < outletClear - 1e-9);
    }
    const free = mine
      .filter((a) => a.x.along === undefined)
      .sort((a, b) => (a.x.drawn?.along ?? 0) - (b.x.drawn?.along ?? 0));
    const taken = openings
      .filter((o) => o.side === side)
      .map((o) => ({ from: o.along - alongOf(o.shape) / 2, to: o.along + alongOf(o.shape) / 2 }));
    const sizes = free.map((a) => alongOf(shapeIn(side, a.x)));
    const spread = spreadOut(sizes, taken, box.length, atUnit ? outletClear : between);
    free.forEach((a, i) => {
      const at = spread?.places[i];
      if (at === undefined) unplaced.push({ id: a.x.id, name: a.x.name });
      else put(a, at, atUnit && at - (sizes[i] ?? 0) / 2 < outletClear - 1e-9);
    });
  }
  return { openings, holes, unplaced };
}

type Stretch = { readonly from: number; readonly to: number };

/** Middles of holes of those sizes in a row, none within reach of what is taken; nothing where there is no room. */
function spreadOut(sizes: readonly number[], taken: readonly Stretch[], length: number, clear: number) {
  const sum = sizes.reduce((a, x) => a + x, 0);
  const tightest = sum + between * sizes.length;
  if (sizes.length === 0) return { places: [] };
  if (taken.length > 0) return rowFrom(sizes, taken, length, clear) ?? rowFrom(sizes, taken, length, between);
  const start = clear + tightest <= length + 1e-9 ? clear : length - tightest;
  if (start < between - 1e-9) return undefined;
  const gap = Math.max(between, (length - start - sum) / sizes.length);
  let at = start;
  return {
    places: sizes.map((size) => {
      const middle = at + size / 2;
      at += size + gap;
      // Rounded forward at the unit's end and backward at the far one: neither edge comes nearer than meant.
      return start + size / 2 > middle - 1e-9
        ? Math.ceil(middle / step - 1e-6) * step
        : Math.floor(middle / step + 1e-6) * step;
    }),
  };
}

function rowFrom(sizes: readonly number[], taken: readonly Stretch[], length: number, clear: number) {
  let at = clear;
  const places: number[] = [];
  for (const size of sizes) {
    for (const t of [...taken].sort((a, b) => a.from - b.from))
      if (at < t.to + between && at + size > t.from - between) at = t.to + between;
    if (at + size > length - between + 1e-9) return undefined;
    places.push(at + size / 2);
    at += size + between;
  }
  return { places };
}
