import { describe, expect, it } from 'vitest';
import { checkSource } from '../src/checkSource.ts';
import { source } from './measure.ts';

checkSource(source, 90);

describe('a case file', () => {
  const measure = (file: unknown) => source.measureCase?.(file, '.') ?? [];

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
