import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { applyEdit } from '../document/edit.ts';
import { emptyProject, type Project } from '../schema/project.ts';
import { priceChanges } from './changes.ts';
import { priceIn } from './money.ts';
import { readPrices } from './read.ts';

const pricesOf = (text: string): Record<string, number> =>
  Object.fromEntries(readPrices(text).taken.map(({ entry }) => [entry.name ?? '', entry.price?.value as number]));
const leftOf = (text: string) => readPrices(text).left.map((l) => `${l.problem.path.join(' ')}: ${l.problem.mend}`);

describe('one price as people write it', () => {
  it.each<[string, ',' | '.' | undefined, number | string]>([
    ['12.50', undefined, 12.5],
    ['12,50', undefined, 12.5],
    ['1.234,50 €', undefined, 1234.5],
    ['$1,234.50', undefined, 1234.5],
    ['1 234,50 kr', undefined, 1234.5],
    ["CHF 1'234.50", undefined, 1234.5],
    ['1,234,567', undefined, 1234567],
    ['0,125', undefined, 0.125],
    ['12.-', undefined, 12],
    ['12,–', undefined, 12],
    ['.99', undefined, 0.99],
    ['1,234', undefined, 'two-readings'],
    ['1,234', '.', 1234],
    ['1,234', ',', 1.234],
    ['-5', undefined, -5],
    ['−5,50', undefined, -5.5],
    ['ask', undefined, 'words'],
    ['1.2.3,4,5', undefined, 'words'],
    ['10-12', undefined, 'words'],
    ['=1+1', undefined, 'words'],
    ['', undefined, 'empty'],
    ['€', undefined, 'empty'],
  ])('%j with %j between is %j', (cell, column, expected) => {
    const read = priceIn(cell, column);
    expect('price' in read ? read.price : read.why).toBe(expected);
  });
});

describe('a price file in its dialects', () => {
  const same = { 'Duct board, 1 in': 54.5, Mastic: 21 };
  it.each<[string, string]>([
    ['commas and quotes', 'name,price\n"Duct board, 1 in",54.50\nMastic,21.00\n'],
    [
      'semicolons and decimal commas, with a mark of UTF-8 and Windows lines',
      '\uFEFFItem;Net price (€)\r\n"Duct board, 1 in";54,50\r\nMastic;21,00\r\n',
    ],
    ['tabs', 'Product\tPrice\nDuct board, 1 in\t$54.50\nMastic\t$21\n'],
    ['bars', 'what|cost\nDuct board, 1 in|54,50\nMastic|21\n'],
    ['decimal commas in quotes between commas', 'name,price\n"Duct board, 1 in","54,50"\nMastic,"21,00"\n'],
    [
      'other columns, in another order, blank rows',
      'no,price,stock,article\n\n1,54.50,3,"Duct board, 1 in"\n,,,\n2,21,0,Mastic\n',
    ],
  ])('reads %s', (_name, text) => {
    expect(pricesOf(text)).toEqual(same);
    expect(leftOf(text)).toEqual([]);
  });

  it('settles thousands by the whole column', () => {
    expect(pricesOf('name;price\nUnit;3.600\nTape;9,50\n')).toEqual({ Unit: 3600, Tape: 9.5 });
    expect(leftOf('name;price\nUnit;3.600\nTape;9\n')).toEqual([
      expect.stringContaining('row 2 price: The price may mean'),
    ]);
  });

  it('keeps inch signs, doubled quotes and cells of two lines, and still counts the lines of the file', () => {
    const text = 'name,price\nPipe 12" long,4\n"Elbow 4"", 90°",5\n"Pan\nwith outlet",6\n,7\n';
    expect(pricesOf(text)).toEqual({ 'Pipe 12" long': 4, 'Elbow 4", 90°': 5, 'Pan\nwith outlet': 6 });
    expect(leftOf(text)).toEqual(['row 6 name: It has no name.']);
  });

  it('leaves each bad row with its place, its reason and all of its cells', () => {
    const text = 'name,price,unit\nA,0,\nB,free,\nC,-3,\n,4,\nD,5,bag\nd,6,Bag\nE,,\nF,7,roll';
    expect(leftOf(text)).toEqual([
      'row 2 price: The price is 0: nothing is free, ask the shop.',
      'row 3 price: The price is not a number.',
      'row 4 price: The price is negative.',
      'row 5 name: It has no name.',
      'row 7 name: It stands in row 6 already.',
      'row 8 price: It has no price.',
    ]);
    expect(readPrices(text).left[1]?.cells).toEqual(['B', 'free', '']);
    expect(pricesOf(text)).toEqual({ D: 5, F: 7 });
  });

  it.each([
    ['UTF-16 as a browser decodes it', new TextDecoder().decode(new Uint8Array([0xff, 0xfe, 0x6e, 0, 0x61, 0]))],
    ['UTF-16, big end first', new TextDecoder().decode(new Uint8Array([0xfe, 0xff, 0, 0x6e, 0, 0x61]))],
    ['UTF-16 without a zero in it', new TextDecoder().decode(new Uint8Array([0xff, 0xfe, 0x4e, 0x4e, 0x4e, 0x4e]))],
  ])('refuses %s with words', (_name, text) => {
    const read = readPrices(text);
    expect(read.taken).toEqual([]);
    expect(read.problems[0]?.mend).toContain('UTF-8');
  });

  it('takes columns by what a person says they are', () => {
    const read = readPrices('Ting;Pris\nPlate;54,5\n', { name: 'Ting', price: 'Pris' });
    expect(read.taken[0]?.entry).toMatchObject({ name: 'Plate', price: { value: 54.5, as: '54,5' } });
    const unknown = readPrices('Ting;Pris\nPlate;54,5\n');
    expect(unknown.heads).toEqual(['Ting', 'Pris']);
    expect(unknown.problems.map((p) => p.code)).toEqual(['missing-column', 'missing-column']);
  });

  it('takes off the guard that our tables put before what a spreadsheet would run, and nothing else', () => {
    expect(Object.keys(pricesOf("name,price\n'=1+1,2\n'@x,3\n'quoted',4\n"))).toEqual(['=1+1', '@x', "'quoted'"]);
  });

  it('never throws, and every row that is not blank is taken or left', () => {
    const cell = fc.string({ unit: fc.constantFrom(...'a1,;"\'=-.\n €'), maxLength: 8 });
    fc.assert(
      fc.property(fc.array(fc.tuple(cell, cell), { maxLength: 12 }), (rows) => {
        const quoted = (c: string) => `"${c.replaceAll('"', '""')}"`;
        const text = ['name;price', ...rows.map((r) => r.map(quoted).join(';'))].join('\n');
        const read = readPrices(text);
        const filled = rows.filter((r) => r.some((c) => c.trim() !== '')).length;
        expect(read.taken.length + read.left.length).toBe(filled);
        readPrices(rows.flat().join(''));
      }),
      { seed: 20261128, numRuns: 300 },
    );
  });
});

describe('prices into a project', () => {
  const made = (project: Project, text: string): Project =>
    priceChanges(project, readPrices(text)).reduce((p, { path, after }, seq) => {
      const before = p.work?.prices?.[path.at(-1) ?? ''];
      const { value, problems } = applyEdit(p, { device: 'd', seq, path, before, after });
      expect(problems).toEqual([]);
      return value;
    }, project);

  it('are added in the order of the file, and taken again they change and keep what else was said', () => {
    const first = made(emptyProject, 'name,price,unit\nB,2,each\nA,1,each\n!!,3,\n!?,4,\n');
    const entries = Object.values(first.work?.prices ?? {}).sort((a, b) =>
      (a.order ?? '') < (b.order ?? '') ? -1 : 1,
    );
    expect(entries.map((e) => e.name)).toEqual(['B', 'A', '!!', '!?']);
    const placed = {
      ...first,
      work: { prices: { ...first.work?.prices, b: { ...first.work?.prices?.b, line: 'air/tape' } } },
    };
    const second = made(placed as Project, 'name,price,unit\nb,5,Each\nC,9,\n');
    expect(second.work?.prices?.b).toMatchObject({ line: 'air/tape', price: { value: 5 } });
    expect(Object.keys(second.work?.prices ?? {}).length).toBe(5);
  });

  it('keep their order keys short over many files', () => {
    let project: Project = emptyProject;
    for (let file = 0; file < 30; file++) project = made(project, `name,price\nThing ${file},${file + 1}\n`);
    const orders = Object.values(project.work?.prices ?? {}).map((p) => p.order ?? '');
    expect([...orders].sort()).toEqual(orders);
    expect(Math.max(...orders.map((o) => o.length))).toBeLessThanOrEqual(8);
  });
});
