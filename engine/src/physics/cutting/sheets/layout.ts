import { metresOf } from '../whole.ts';
import type { Box } from './fronts.ts';

/** A rectangle on a sheet: m, x to the right and y up from the sheet's lower left corner. */
export type Rect = { readonly x: number; readonly y: number; readonly width: number; readonly height: number };

/** A straight cut right through the part it is made in; it takes the kerf to the right of it, or above it. */
export type ThroughCut = {
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
};

export type Laid = {
  readonly placed: readonly (Rect & { readonly sort: number; readonly turned: boolean })[];
  readonly cuts: readonly ThroughCut[];
  readonly rests: readonly Rect[];
};

/** The box without the pieces that are not wanted: what is left only gets smaller. `wanted` is counted down. */
export function pruned(box: Box, wanted: number[], join: (a: Box, b: Box, beside: boolean) => Box): Box | undefined {
  if (box.piece >= 0) {
    const left = wanted[box.piece] ?? 0;
    if (left === 0) return undefined;
    wanted[box.piece] = left - 1;
    return box;
  }
  const first = box.first && pruned(box.first, wanted, join);
  const second = box.second && pruned(box.second, wanted, join);
  return first && second ? join(first, second, box.beside) : (first ?? second);
}

type Region = { readonly x: number; readonly y: number; readonly w: number; readonly h: number };

/** Whole lengths on one sheet: the cuts in the order in which they can be made, and what each leaves. */
export function layBox(box: Box, sheet: { readonly w: number; readonly h: number }, trim: number, kerf: number): Laid {
  const placed: (Rect & { sort: number; turned: boolean })[] = [];
  const cuts: ThroughCut[] = [];
  const rests: Rect[] = [];
  const rect = (r: Region): Rect => ({
    x: metresOf(r.x),
    y: metresOf(r.y),
    width: metresOf(r.w),
    height: metresOf(r.h),
  });

  /** Cuts upright at x, or level at y, across the region. */
  const upright = (r: Region, x: number): void => void cuts.push(line(x, r.y, x, r.y + r.h));
  const level = (r: Region, y: number): void => void cuts.push(line(r.x, y, r.x + r.w, y));
  const rest = (r: Region): void => void (r.w > 0 && r.h > 0 && rests.push(rect(r)));

  const cutRight = (r: Region, w: number): Region => {
    if (w >= r.w) return r;
    upright(r, r.x + w);
    rest({ x: r.x + w + kerf, y: r.y, w: r.w - w - kerf, h: r.h });
    return { ...r, w };
  };
  const cutTop = (r: Region, h: number): Region => {
    if (h >= r.h) return r;
    level(r, r.y + h);
    rest({ x: r.x, y: r.y + h + kerf, w: r.w, h: r.h - h - kerf });
    return { ...r, h };
  };

  const lay = (b: Box, r: Region): void => {
    // The order that leaves the larger single rest.
    const rightFirst = Math.max((r.w - b.w) * r.h, b.w * (r.h - b.h)) >= Math.max((r.h - b.h) * r.w, b.h * (r.w - b.w));
    const own = rightFirst ? cutTop(cutRight(r, b.w), b.h) : cutRight(cutTop(r, b.h), b.w);
    const { first, second } = b;
    if (!first || !second) {
      placed.push({ ...rect(own), sort: b.piece, turned: b.turned });
    } else if (b.beside) {
      upright(own, own.x + first.w);
      lay(first, { ...own, w: first.w });
      lay(second, { ...own, x: own.x + first.w + kerf, w: second.w });
    } else {
      level(own, own.y + first.h);
      lay(first, { ...own, h: first.h });
      lay(second, { ...own, y: own.y + first.h + kerf, h: second.h });
    }
  };

  lay(box, trimmed(sheet, trim, kerf, cuts));
  return { placed, cuts, rests };
}

const line = (x: number, y: number, x2: number, y2: number): ThroughCut => ({
  from: [metresOf(x), metresOf(y)],
  to: [metresOf(x2), metresOf(y2)],
});

/**
 * Four cuts that take the factory edges off; each takes its kerf from the edge that falls away. A blade wider than the trim
 * runs partly beside the sheet: such a cut begins beyond its edge.
 */
function trimmed(sheet: { w: number; h: number }, trim: number, kerf: number, cuts: ThroughCut[]): Region {
  const inner = { x: trim, y: trim, w: sheet.w - 2 * trim, h: sheet.h - 2 * trim };
  if (trim === 0) return inner;
  const low = trim - kerf;
  cuts.push(line(low, 0, low, sheet.h), line(trim + inner.w, 0, trim + inner.w, sheet.h));
  cuts.push(line(trim, low, trim + inner.w, low), line(trim, trim + inner.h, trim + inner.w, trim + inner.h));
  return inner;
}
