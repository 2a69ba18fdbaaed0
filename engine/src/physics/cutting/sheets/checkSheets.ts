import { Checking, sortsMost } from '../problem.ts';
import { divisorOf, wholeOf } from '../whole.ts';
import type { Flat } from './fronts.ts';
import type { SheetJob } from './sheetJob.ts';

/** Pieces of one size by who asked for them; everything in whole units of `unit` nanometres, stock without its trim. */
export type WholeSheets = {
  readonly pieces: readonly Flat[];
  readonly demand: readonly number[];
  readonly ids: readonly (readonly { readonly id: string; readonly turned: boolean }[])[];
  readonly stock: readonly { readonly w: number; readonly h: number; readonly cost: number; readonly count: number }[];
  readonly kerf: number;
  readonly unit: number;
};

/** Everything wrong with the numbers of a job. */
export function checkSheets({ pieces, stock, kerf, trim, remnantLeast }: SheetJob): Checking {
  const c = new Checking();
  c.atLeastNought(['kerf'], kerf);
  c.atLeastNought(['trim'], trim);
  c.atLeastNought(['remnantLeast'], remnantLeast);
  if (stock.length === 0) c.say('no-stock', ['stock'], 0);
  stock.forEach((s, i) => {
    for (const side of ['width', 'height'] as const)
      if (c.positive(['stock', i, side], s[side]) && trim >= 0 && s[side] <= 2 * trim)
        c.say('does-not-fit', ['stock', i, side], s[side], { min: 2 * trim });
    c.stock(['stock', i], s);
  });
  pieces.forEach((p, i) => {
    c.positive(['pieces', i, 'width'], p.width);
    c.positive(['pieces', i, 'height'], p.height);
    c.count(['pieces', i, 'count'], p.count);
  });
  c.pieces(pieces);
  return c;
}

/** Pieces sorted by size, and told of where no sheet takes them. A piece that may turn is kept with its wide side across. */
export function sheetSorts(job: SheetJob, check: Checking): WholeSheets {
  const kerf = wholeOf(job.kerf);
  const inner = job.stock.map((s) => ({
    w: wholeOf(s.width) - 2 * wholeOf(job.trim),
    h: wholeOf(s.height) - 2 * wholeOf(job.trim),
  }));
  const sorts = new Map<string, { flat: Flat; ids: { id: string; turned: boolean }[] }>();
  job.pieces.forEach((p, i) => {
    const [w, h] = [wholeOf(p.width), wholeOf(p.height)];
    const fits = inner.some((s) => (w <= s.w && h <= s.h) || (p.turns && h <= s.w && w <= s.h));
    if (!fits) {
      const [max] = inner.map((s) => Math.max(s.w, s.h)).sort((a, b) => b - a);
      check.say('larger-than-stock', ['pieces', i], `${p.width} x ${p.height}`, { max: (max ?? 0) / 1e9 });
      return;
    }
    const turned = p.turns && h > w;
    const flat = turned ? { w: h, h: w, turns: true } : { w, h, turns: p.turns && w !== h };
    const key = `${flat.w}:${flat.h}:${flat.turns}`;
    const sort = sorts.get(key) ?? { flat, ids: [] };
    for (let n = 0; n < p.count; n++) sort.ids.push({ id: p.id, turned });
    sorts.set(key, sort);
  });
  if (sorts.size > sortsMost) check.say('too-many', ['pieces'], sorts.size, { max: sortsMost });
  const all = [...sorts.values()];
  // Kerf and sides with it: every sum of sides and cuts is then a whole number of units.
  const unit = divisorOf([kerf, ...[...all.map((s) => s.flat), ...inner].flatMap((x) => [x.w, x.h])]);
  return {
    pieces: all.map(({ flat }) => ({ w: flat.w / unit, h: flat.h / unit, turns: flat.turns })),
    demand: all.map((s) => s.ids.length),
    ids: all.map((s) => s.ids),
    stock: inner.map((s, k) => ({
      w: s.w / unit,
      h: s.h / unit,
      cost: job.stock[k]?.cost ?? 1,
      count: job.stock[k]?.count ?? Infinity,
    })),
    kerf: kerf / unit,
    unit,
  };
}
