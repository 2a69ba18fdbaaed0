import { packSheets } from '@kneewall/engine/physics';
import { describe, expect, it } from 'vitest';
import { checkSource } from '../src/checkSource.ts';
import { numbersFrom } from '../unfolding/randomBoxes.ts';
import { source } from './measure.ts';
import { readText } from './readText.ts';
import { sheetFaults } from './recut.ts';

checkSource(source, 144);

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
      ['bars', 3, true],
      ['bars above the bound', 0, true],
      ['broken promises when cut', 0, true],
    ]);
    const sheets = measure({ name: 'sheets', sheet: { w: 9, h: 9 }, pieces: [{ id: 'a', w: 4, h: 5, count: 4 }] });
    expect(sheets.map((r) => [r.field, r.ok])).toEqual(
      [1, 2].flatMap(() => [
        ['sheets', true],
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

  const bin = (name: string) => ({ name, capacity: 10, items: [6, 4], optimum: 1, how_known: 'looked up' });
  const sheet = { name: 'a', sheet: { w: 9, h: 8 } };
  it.each([
    ['a bar and its lengths', '2\r\n10\r\n6\r\n4\r\n', { name: 'a', capacity: 10, lengths: [6, 4], demand: [1, 1] }],
    [
      'lengths and how many',
      '2\n10.5\n6 3\n4.25\t1\n',
      { name: 'a', capacity: 10.5, lengths: [6, 4.25], demand: [3, 1] },
    ],
    ['both in one head', '2 10\n6\n4\n', { name: 'a', capacity: 10, items: [6, 4] }],
    ['both the other way round', '10 2\n6\n4\n', { name: 'a', capacity: 10, items: [6, 4] }],
    ['bars by name', ' 2\n u1\n 10 2 1\n6\n4\n u2\n 10 2 1\n6\n4\n', { instances: [bin('u1'), bin('u2')] }],
    ['a sheet', '# by hand\n1\n9 8\n4 5\n', { ...sheet, pieces: [{ id: 0, w: 4, h: 5 }] }],
    ['a sheet with values', '1\n9 8\n4 5 20\n', { ...sheet, pieces: [{ id: 0, w: 4, h: 5 }] }],
    ['a sheet, how many, values', '1\n9 8\n4 5 3 20\n', { ...sheet, pieces: [{ id: 0, w: 4, h: 5, count: 3 }] }],
    [
      'classes',
      ' 1 PROBLEM CLASS\n 1 N. OF ITEMS\n 1 7 RELATIVE AND ABSOLUTE N.\n 9 8 HBIN,WBIN\n 4 5 H(I),W(I)\n\n',
      { instances: [{ ...sheet, name: 'class 1, 1 pieces, 7', pieces: [{ id: 0, w: 4, h: 5 }] }] },
    ],
  ])('as text, %s, is read', (_, text, data) => {
    expect(readText(text, 'a')).toEqual(data);
  });

  it.each([
    ['an empty text', ' \n', 'empty'],
    ['a text cut short', '3\n10\n6\n', 'line 3: the file ends before piece 2 of 3'],
    ['a text with more than its pieces', '1\n10\n6\n4\n', 'line 4: “4” stands after the last piece'],
    ['a letter', '2\n10\n6\nx\n', 'line 4: “x” has 0 numbers'],
    ['a third number that may be either', '1\n9 8\n4 5 3\n', 'line 3: is 3 how many, or a value?'],
    ['a heading of another kind', 'ID,WIDTH\n0,4\n', 'line 1: “ID WIDTH” has 0 numbers'],
  ])('%s says where', (_, text, said) => {
    expect(() => measure(text)).toThrow(said);
  });
});
