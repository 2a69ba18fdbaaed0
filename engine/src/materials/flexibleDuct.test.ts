import { emptyProject, openProject, resolveProject } from '@kneewall/project';
import { describe, expect, it } from 'vitest';
import { materials as airLines } from '../air/materials.ts';
import { airModel } from '../air/model.ts';
import type { AirResult } from '../air/result.ts';
import { moneyOf } from '../air/sizing/effort.ts';
import type { PriceBook } from '../air/sizing/priceBook.ts';
import { slackIn } from '../air/sizing/reshape.ts';
import { type CoilJob, cutCoils } from '../physics/cutting/index.ts';
import { inch } from '../physics/exact.ts';
import { scenario } from '../plan/scenario.ts';
import { cutPlan } from './cutting/cutPlan.ts';
import { inputsOf } from './cutting/inputsOf.ts';
import { sum } from './sum.ts';

const q = (value: unknown) => ({ value, known: 'measured' });
const run = (length: number, slack: number, d = 8) => ({
  kind: 'flexible',
  from: 'box',
  diameter: q(d * inch),
  length: q(length),
  compression: q(slack),
});
const sections = {
  box: { kind: 'board', width: q(0.5), height: q(0.3), length: q(1.2) },
  a: run(5, 0.04),
  b: run(5, 0.12),
  c: run(4.6, 0.3),
  d: run(3.3, 0, 6),
};
const filter = { width: q(0.5), height: q(0.5) };
const opened = openProject(JSON.stringify({ ...emptyProject, routes: { ducts: { sections, filter } } }));
if (!opened.ok) throw new Error('it opens');
const project = resolveProject(opened.project);
const blower = {
  filterIncluded: true,
  tables: [{ setting: '', points: [0, 1].map((flow) => ({ flow, pressure: 9 })) }],
};
const model = airModel(project.routes.ducts, blower as unknown as Parameters<typeof airModel>[1], 101_325, scenario());
const flexible = model.sections.filter((x) => x.kind === 'flexible');

/** By definition: the stretched length of which that share is pushed together, and 2 in at either end. */
const byHand: Readonly<Record<string, number>> = {
  a: 5 / 0.96 + 4 * inch,
  b: 5 / 0.88 + 4 * inch,
  c: 4.6 / 0.7 + 4 * inch,
  d: 3.3 + 4 * inch,
};

describe('flexible duct', () => {
  const cut = cutPlan(inputsOf(project));
  const there = { sections: {}, terminals: [] };
  const result = {
    model: { ok: true, value: model },
    shut: { ok: false },
    there,
    fittings: [],
  } as unknown as AirResult;
  const lines = airLines(result);
  const pending = { ok: false, because: 'pending', paths: [] } as const;
  const own = { stock: [], prices: [], orders: [], deliveries: [], costs: {}, saw: 0, panels: [], caps: [] };
  const { list } = sum(
    { own, list: pending, cut: { ok: true, value: cut }, workings: {}, wanted: [] },
    { tasks: [], materials: lines, findings: [] },
  );

  it('is priced, listed and cut at one length, run by run', () => {
    // A metre at a price of one, and nothing for its ends: the money is the length.
    const book: PriceBook = {
      each: (_, part) => ({ low: 0, likely: part === 'run' ? 1 : 0, high: 9 }),
      entered: () => true,
    };
    for (const x of flexible) {
      const shape = { kind: x.kind, diameter: x.diameter };
      const priced = moneyOf({ shape, length: x.length, perimeter: 1, bends: 0, slack: slackIn(x) }, book).likely;
      const listed = lines.find((l) => l.id === `air/duct:${x.id}`)?.amount;
      const pieces = cut.bags.flatMap((b) => b.plan.coils.flatMap((c) => c.pieces)).filter((p) => p.run === x.id);
      const laid = pieces.reduce((a, p) => a + p.length, 0) - 0.1016 * (pieces.length - 1);
      for (const found of [priced, listed, laid]) expect(found).toBeCloseTo(byHand[x.id] ?? 0, 8);
    }
  });

  it('is bought in as many bags as are laid out, without waste beside', () => {
    if (!list.ok) throw new Error(list.because);
    const line = list.value.lines.find((l) => l.id === 'air/flexible 203');
    // 5.3, 5.8 and 6.7 m: three bags of 25 ft without a splice, where what they add up to would fill two and a bit.
    expect(line?.need).toBeCloseTo((byHand.a ?? 0) + (byHand.b ?? 0) + (byHand.c ?? 0), 8);
    expect([line?.pieces, line?.waste, line?.bought]).toEqual([3, 0, 3 * 7.62]);
    expect(cut.bags.find((b) => b.diameter > 0.2)?.plan.bought).toBe(3);
  });
});

describe('splices', () => {
  const job = (lengths: readonly number[], more: Partial<CoilJob>): CoilJob => ({
    runs: lengths.map((length, i) => ({ id: `${i}`, length })),
    coil: 7.5,
    sleeve: 0.1,
    rule: 'fewest-coils',
    ...more,
  });

  it('are never more in a run than may be, unless the run is too long for them, and then it is named', () => {
    let seed = 5;
    const next = () => {
      seed = (seed * 48_271) % 2_147_483_647;
      return seed / 2_147_483_647;
    };
    for (let n = 0; n < 60; n++) {
      const splicesMost = n % 3;
      const lengths = Array.from({ length: 2 + (n % 7) }, () => 0.5 + 18 * next());
      const plan = cutCoils(job(lengths, { splicesMost, rule: n % 2 ? 'fewest-coils' : 'fewest-splices' }));
      // So many coils of 7.5 m, each but the first 0.1 m shorter, hold a run at the least.
      const least = lengths.map((l) => Math.max(0, Math.ceil((l - 0.1) / 7.4 - 1e-9) - 1));
      const tooLong = least.flatMap((k, i) => (k > splicesMost ? [`${i}`] : []));
      expect([...plan.tooMany].sort()).toEqual(tooLong);
      expect(plan.bought).toBeGreaterThanOrEqual(plan.coilsLeast);
    }
  });

  it('save no coil where none may be made', () => {
    // 14.7 m and a sleeve of 0.1 m: two coils of 7.5 m, one run in two parts.
    expect(cutCoils(job([4.9, 4.9, 4.9], {})).bought).toBe(2);
    expect(cutCoils(job([4.9, 4.9, 4.9], { splicesMost: 0 })).bought).toBe(3);
  });
});
