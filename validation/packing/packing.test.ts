import { packSheets } from '@kneewall/engine/physics';
import { describe, expect, it } from 'vitest';
import { checkSource } from '../src/checkSource.ts';
import { numbersFrom } from '../unfolding/randomBoxes.ts';
import { source } from './measure.ts';
import { sheetFaults } from './recut.ts';

checkSource(source, 96);

describe('random sheets with kerf, trim, two sizes and some on hand (invented)', () => {
  it.each([1, 2, 3, 4, 5, 6])('can be cut as their lists say: %s', (seed) => {
    const next = numbersFrom(1000 + seed);
    const pieces = Array.from({ length: 14 }, (_, i) => ({
      id: `p${i}`,
      width: 0.1 + next(),
      height: 0.1 + next(),
      count: 1 + Math.floor(2 * next()),
      turns: next() < 0.5,
    }));
    const stock = [
      { id: 'sheet', width: 2.4, height: 1.2, cost: 20 },
      { id: 'rest', width: 1.3, height: 1.25, cost: 0, count: 2 },
    ];
    const job = { pieces, stock, kerf: 0.003, trim: 0.005, remnantLeast: 0.2, effort: { joins: 300_000, nodes: 30 } };
    const plan = packSheets(job);
    expect(sheetFaults(job, plan)).toBe(0);
    expect([plan.leftOut, plan.problems]).toEqual([[], []]);
    expect(plan.cost).toBeGreaterThanOrEqual(plan.bound);
  });
});

describe('a case file', () => {
  const measure = (file: unknown) => source.measureCase?.(file, '.') ?? [];

  it.each([
    ['no pieces', { name: 'a', capacity: 5 }, /^items: give/],
    ['two lists of pieces', { name: 'a', capacity: 5, items: [1], lengths: [2] }, /^items: give/],
    ['a demand too few', { name: 'a', capacity: 5, lengths: [1, 2], demand: [3] }, /^demand: one number for each/],
    ['a letter for a number', { instances: [{ name: 'a', capacity: 5, items: [1, 'x'] }] }, /^instances\/0\/items\/1/],
    ['a count beyond all memory', { name: 'a', capacity: 5, lengths: [1], demand: [1e9] }, /^demand\/0/],
    ['no instance', { instances: [] }, /^instances: a list/],
  ])('with %s says where', (_, file, said) => {
    expect(() => measure(file)).toThrow(said);
  });

  it('without results is held against its own bound and cut again', () => {
    const bars = measure({ name: 'bars', capacity: 10, lengths: [5], demand: [3], kerf: 1 });
    expect(bars.map((r) => [r.field, r.ours, r.ok])).toEqual([
      ['bars above the bound', 0, true],
      ['broken promises when cut', 0, true],
    ]);
    const sheets = measure({ name: 'sheets', sheet: { w: 9, h: 9 }, pieces: [{ id: 'a', w: 4, h: 5, count: 4 }] });
    expect(sheets.map((r) => [r.field, r.ok])).toEqual(
      [1, 2].flatMap(() => [
        ['sheets above the bound', true],
        ['broken promises when cut', true],
      ]),
    );
  });

  it('with a result that is not the optimum fails', () => {
    const rows = measure({ name: 'bars', capacity: 10, items: [6, 6, 4], optimum: 3 });
    expect(rows.find((r) => r.field === 'bars')).toMatchObject({ ours: 2, ok: false });
  });

  it.each([
    ['a piece longer than its bar', { name: 'bars', capacity: 10, items: [11] }, 'larger-than-stock'],
    ['a sheet of nothing', { name: 'x', sheet: { w: 0, h: 1 }, pieces: [{ id: 1, w: 1, h: 1 }] }, 'sheet'],
    ['neither shape', { name: 'x' }, 'capacity'],
    ['a list', [], 'object'],
  ])('with %s says so', (_name, file, message) => {
    expect(() => measure(file)).toThrow(message);
  });
});
