import { describe, expect, it } from 'vitest';
import type { BarJob } from './bars/barJob.ts';
import { bestFit } from './bars/bestFit.ts';
import { cutBars } from './bars/cutBars.ts';
import { fullestFit } from './bars/fullestFit.ts';
import type { CoilJob } from './coils/coilJob.ts';
import { cutCoils } from './coils/cutCoils.ts';
import { packSheets } from './sheets/packSheets.ts';
import type { SheetJob } from './sheets/sheetJob.ts';

/** Numbers from 0 to 1 that come out the same everywhere. */
function numbersFrom(seed: number): () => number {
  let x = seed;
  return () => {
    x = (x * 48_271) % 2_147_483_647;
    return x / 2_147_483_647;
  };
}

/** Fewest groups into which the items can be parted so that each group fits: by going through all sets. */
function fewestGroups(n: number, fits: (set: number) => boolean): number {
  const least = new Array<number>(2 ** n).fill(Infinity);
  least[0] = 0;
  for (let set = 1; set < 2 ** n; set++)
    for (let group = set; group > 0; group = (group - 1) & set)
      if (group & (set & -set) && fits(group)) least[set] = Math.min(least[set]!, 1 + least[set ^ group]!);
  return least[2 ** n - 1]!;
}

const chosen = <T>(items: readonly T[], set: number): T[] => items.filter((_, i) => set & (1 << i));

/** Whether pieces can be freed from a sheet: every first cut at every whole place, every sharing out. By definition, slow. */
function canBeCut(
  pieces: readonly (readonly [number, number])[],
  w: number,
  h: number,
  kerf: number,
  turns: boolean,
): boolean {
  if (pieces.length === 0) return true;
  if (w <= 0 || h <= 0 || pieces.reduce((sum, [a, b]) => sum + a * b, 0) > w * h) return false;
  const [first] = pieces;
  if (pieces.length === 1 && first)
    return (first[0] <= w && first[1] <= h) || (turns && first[1] <= w && first[0] <= h);
  for (let share = 1; share < 2 ** pieces.length - 1; share++) {
    const [a, b] = [chosen(pieces, share), chosen(pieces, 2 ** pieces.length - 1 - share)];
    for (let x = 1; x < w; x++)
      if (canBeCut(a, x, h, kerf, turns) && canBeCut(b, w - x - kerf, h, kerf, turns)) return true;
    for (let y = 1; y < h; y++)
      if (canBeCut(a, w, y, kerf, turns) && canBeCut(b, w, h - y - kerf, kerf, turns)) return true;
  }
  return false;
}

describe('bars', () => {
  const job = (pieces: readonly number[], more: Partial<BarJob> = {}): BarJob => ({
    pieces: pieces.map((length, i) => ({ id: `p${i}`, length, count: 1 })),
    stock: [{ id: 'bar', length: 10 }],
    kerf: 0,
    remnantLeast: 1,
    ...more,
  });

  it('are as few as going through every sharing out finds', () => {
    const next = numbersFrom(7);
    for (let n = 0; n < 60; n++) {
      const kerf = n % 3 === 0 ? 0.25 : 0;
      const lengths = Array.from({ length: 9 }, () => 1 + Math.floor(36 * next()) / 4);
      const fits = (set: number) => chosen(lengths, set).reduce((sum, x) => sum + x + kerf, -kerf) <= 10;
      const plan = cutBars(job(lengths, { kerf }));
      expect([plan.bars.length, plan.proved, plan.bound]).toEqual([fewestGroups(9, fits), true, plan.bars.length]);
    }
  });

  it('take two halves from a bar only where the blade takes nothing', () => {
    expect(cutBars(job([5, 5])).bars.length).toBe(1);
    expect(cutBars(job([5, 5], { kerf: 0.003 })).bars.length).toBe(2);
  });

  it('meet to the last where thirds of an inch fill a foot', () => {
    const third = 0.3048 / 3;
    expect(cutBars(job([third, third, third], { stock: [{ id: 'foot', length: 0.3048 }] })).bars.length).toBe(1);
  });

  it('use what is on hand first, and buy the cheaper length', () => {
    const stock = [
      { id: 'long', length: 10, cost: 12 },
      { id: 'short', length: 6, cost: 8 },
      { id: 'left from before', length: 4, cost: 0, count: 1 },
    ];
    // 4 from what is on hand; 6 and 4 of one long one cost less than a short one with a second beside it.
    const plan = cutBars(job([4, 4, 6], { stock }));
    expect([plan.cost, plan.bound, plan.proved]).toEqual([12, 12, true]);
    expect(plan.bars.map((b) => b.stock).sort()).toEqual(['left from before', 'long']);
  });

  it('say which pieces the stock on hand does not give', () => {
    const plan = cutBars(job([6, 6, 3], { stock: [{ id: 'bar', length: 10, count: 1 }] }));
    expect(plan.leftOut).toEqual([{ piece: 'p1', copies: 1 }]);
    expect(plan.bars.flatMap((b) => b.pieces.map((p) => p.length))).toEqual([6, 3]);
  });

  it('keep what is left from the length asked for on, with a name', () => {
    const rest = (remnantLeast: number) => cutBars(job([6], { kerf: 0.5, remnantLeast })).bars[0]?.rest;
    expect(rest(3.5)).toEqual({ from: 6.5, length: 3.5, remnant: 'bar rest 1' });
    expect(rest(3.6)).toEqual({ from: 6.5, length: 3.5 });
  });

  it('tell all that is wrong at once', () => {
    const bad = cutBars({
      pieces: [
        { id: 'a', length: 11, count: 1 },
        { id: 'a', length: 0, count: 1.5 },
        { id: 'c', length: Number.NaN, count: 1 },
      ],
      stock: [{ id: 'bar', length: 10, cost: -1 }],
      kerf: -1,
      remnantLeast: 0,
    });
    expect(bad.bars).toEqual([]);
    expect(bad.problems.map((p) => `${p.at.join('/')} ${p.code}`)).toEqual([
      'kerf negative',
      'stock/0/cost negative',
      'pieces/0/length larger-than-stock',
      'pieces/1/length not-positive',
      'pieces/2/length not-finite',
      'pieces same-name a'.replace(' a', ''),
    ]);
    expect(JSON.stringify(bad)).not.toContain('null');
  });
});

describe('sheets', () => {
  const job = (
    pieces: readonly (readonly [number, number])[],
    turns: boolean,
    more: Partial<SheetJob> = {},
  ): SheetJob => ({
    pieces: pieces.map(([width, height], i) => ({ id: `p${i}`, width, height, count: 1, turns })),
    stock: [{ id: 'sheet', width: 7, height: 6 }],
    kerf: 0,
    trim: 0,
    remnantLeast: 1,
    ...more,
  });

  it('are as few as every first cut at every place finds', () => {
    const next = numbersFrom(11);
    for (let n = 0; n < 40; n++) {
      const turns = n % 2 === 0;
      const kerf = n % 4 > 1 ? 1 : 0;
      const pieces = Array.from({ length: 5 }, () => [1 + Math.floor(5 * next()), 1 + Math.floor(5 * next())] as const);
      const fits = (set: number) => canBeCut(chosen(pieces, set), 7, 6, kerf, turns);
      const plan = packSheets(job(pieces, turns, { kerf }));
      expect([plan.sheets.length, plan.proved]).toEqual([fewestGroups(5, fits), true]);
    }
  });

  it('take the edges off first', () => {
    const fits = (trim: number) => packSheets(job([[6, 5]], false, { trim })).sheets.length;
    expect([fits(0), fits(0.5), fits(0.51)]).toEqual([1, 1, 0]);
    expect(packSheets(job([[6, 5]], false, { trim: 0.5 })).sheets[0]?.placed[0]).toMatchObject({ x: 0.5, y: 0.5 });
  });

  it('turn only what may be turned', () => {
    expect(packSheets(job([[6, 7]], true)).sheets[0]?.placed[0]).toMatchObject({ width: 7, height: 6, turned: true });
    expect(packSheets(job([[6, 7]], false)).problems.map((p) => p.code)).toEqual(['larger-than-stock']);
  });

  it('use a rest from before where it costs nothing', () => {
    const stock = [
      { id: 'sheet', width: 7, height: 6, cost: 20 },
      { id: 'rest', width: 4, height: 3, cost: 0, count: 1 },
    ];
    const plan = packSheets(
      job(
        [
          [7, 6],
          [4, 3],
        ],
        false,
        { stock },
      ),
    );
    expect([plan.cost, plan.bound, plan.proved, plan.sheets.length]).toEqual([20, 20, true, 2]);
  });

  it('say which pieces the sheets on hand do not give', () => {
    const stock = [{ id: 'sheet', width: 7, height: 6, count: 1 }];
    const plan = packSheets(
      job(
        [
          [7, 6],
          [7, 5],
        ],
        false,
        { stock },
      ),
    );
    expect(plan.leftOut.length).toBe(1);
    expect(plan.sheets.length).toBe(1);
  });

  it('come out the same each time', () => {
    const next = numbersFrom(5);
    const pieces = Array.from({ length: 25 }, () => [0.5 + 3 * next(), 0.5 + 3 * next()] as const);
    expect(packSheets(job(pieces, true))).toEqual(packSheets(job(pieces, true)));
  });

  it('tell all that is wrong at once', () => {
    const bad = packSheets(
      job(
        [
          [0, 3],
          [8, 8],
        ],
        true,
        { kerf: -0.1, trim: 4 },
      ),
    );
    expect(bad.problems.map((p) => `${p.at.join('/')} ${p.code}`)).toEqual([
      'kerf negative',
      'stock/0/width does-not-fit',
      'stock/0/height does-not-fit',
      'pieces/0/width not-positive',
    ]);
    expect(packSheets({ ...job([[1, 1]], true), stock: [] }).problems.map((p) => p.code)).toEqual(['no-stock']);
  });
});

describe('coils', () => {
  const job = (lengths: readonly number[], rule: CoilJob['rule'], sleeve = 0): CoilJob => ({
    runs: lengths.map((length, i) => ({ id: `run ${i}`, length })),
    coil: 7.5,
    sleeve,
    rule,
  });
  const summed = (p: ReturnType<typeof cutCoils>, run: string) =>
    p.coils.flatMap((c) => c.pieces).filter((x) => x.run === run);

  it('splice a run longer than a coil, and count what the sleeve takes', () => {
    const plan = cutCoils(job([16], 'fewest-splices', 0.2));
    expect(plan.splices).toEqual([{ run: 'run 0', count: 2 }]);
    expect(plan.coils.length).toBe(3);
    expect(summed(plan, 'run 0').reduce((sum, x) => sum + x.length, 0)).toBeCloseTo(16 + 2 * 0.2, 9);
  });

  it('save a coil by a splice only where that is asked for', () => {
    // Three runs of 5 m: a coil each, or two coils with one run in two parts.
    const plain = cutCoils(job([5, 5, 5], 'fewest-splices'));
    const saved = cutCoils(job([5, 5, 5], 'fewest-coils'));
    expect([plain.coils.length, plain.splices.length, plain.proved]).toEqual([3, 0, true]);
    expect([saved.coils.length, saved.splices, saved.proved]).toEqual([2, [{ run: 'run 1', count: 1 }], true]);
  });

  it('share runs out so that the fewest splices are left', () => {
    // 5 + 2.5 and 4 + 3.5 fill a coil each; in the order given every second run would be cut in two.
    const plan = cutCoils(job([5, 4, 3.5, 2.5], 'fewest-coils'));
    expect([plan.coils.length, plan.splices]).toEqual([2, []]);
  });

  it('give every run its length, whatever the rule', () => {
    const next = numbersFrom(3);
    for (let n = 0; n < 40; n++) {
      const lengths = Array.from({ length: 3 + (n % 15) }, () => 0.5 + 12 * next());
      for (const rule of ['fewest-splices', 'fewest-coils'] as const) {
        const plan = cutCoils(job(lengths, rule, 0.1));
        expect(plan.coils.length).toBeGreaterThanOrEqual(plan.coilsLeast);
        for (const c of plan.coils) expect(c.rest).toBeGreaterThanOrEqual(-1e-9);
        lengths.forEach((length, i) => {
          const parts = summed(plan, `run ${i}`);
          const total = parts.reduce((sum, x) => sum + x.length, 0) - 0.1 * (parts.length - 1);
          expect(total).toBeCloseTo(length, 6);
          expect(parts.length - 1).toBe(plan.splices.find((s) => s.run === `run ${i}`)?.count ?? 0);
        });
      }
    }
  });

  it('tell of a coil of nothing', () => {
    expect(cutCoils({ ...job([5], 'fewest-coils'), coil: 0 }).problems).toMatchObject([
      { code: 'not-positive', at: ['coil'] },
    ]);
  });
});

describe('a first plan by the fullest bars', () => {
  it('fills two of ten by hand where the best fit opens a third', () => {
    const [lengths, demand] = [
      [6, 5, 3, 2],
      [1, 1, 1, 3],
    ];
    const plan = fullestFit(lengths, demand, 10);
    expect(plan.map((p) => [...p.counts])).toEqual([
      [1, 0, 0, 2],
      [0, 1, 1, 1],
    ]);
    expect(bestFit(lengths, demand, [10], [{ cost: 1, count: Infinity }]).length).toBe(3);
  });

  it('is what many lengths begin with', () => {
    const next = numbersFrom(5);
    const pieces = Array.from({ length: 200 }, (_, i) => ({
      id: `p${i}`,
      length: 20_000 + Math.floor(15_000 * next()),
      count: 1,
    }));
    const sizes = pieces.map((p) => p.length).sort((a, b) => b - a);
    const count = (plan: readonly unknown[]) => plan.length;
    const ones = sizes.map(() => 1);
    const fullest = count(fullestFit(sizes, ones, 100_000));
    expect(fullest).toBeLessThan(count(bestFit(sizes, ones, [100_000], [{ cost: 1, count: Infinity }])));
    expect(fullest - Math.ceil(sizes.reduce((a, b) => a + b, 0) / 100_000)).toBeLessThanOrEqual(1);
  });
});
