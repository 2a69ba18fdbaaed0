import type { ListLine } from '@kneewall/engine';
import { applyEdit, emptyProject, type Project, valueAt } from '@kneewall/project';
import { describe, expect, it } from 'vitest';
import { freePrices, priceEdit, takeEdit } from './priceEdits.ts';

const line = { id: 'air/tape', what: 'Foil tape', kind: 'length', piece: 54.864 } as ListLine;
const made = (project: Project, change: ReturnType<typeof priceEdit>): Project => {
  if (!change) throw new Error('nothing to write');
  const edit = { device: 'd', seq: 1, ...change, before: valueAt(project, change.path) };
  const { value, problems } = applyEdit(project, edit);
  expect(problems).toEqual([]);
  return value;
};

describe('the price of a line', () => {
  it('is typed for one pack, typed again it changes, and is no second price', () => {
    const first = made(emptyProject, priceEdit(emptyProject, line, ' 11,90 '));
    expect(Object.values(first.work?.prices ?? {})).toMatchObject([
      { line: 'air/tape', price: { value: 11.9, as: '11,90' }, piece: { value: 54.864 } },
    ]);
    const second = made(first, priceEdit(first, line, '$12.50'));
    expect(Object.values(second.work?.prices ?? {})).toMatchObject([
      { price: { value: 12.5 }, piece: { value: 54.864 } },
    ]);
  });

  it.each(['', '0', '-3', 'ask'])('is not %j', (typed) => {
    expect(priceEdit(emptyProject, line, typed)).toBeUndefined();
  });

  it('may be one that is there and no line has taken', () => {
    const shop = { name: 'Tape XL', price: { value: 9, known: 'nameplate' as const } };
    const project: Project = { ...emptyProject, work: { prices: { a: shop, b: { ...shop, name: 'Used' } } } };
    const taken = { ...line, price: { path: 'work.prices.b' } } as ListLine;
    expect(freePrices(project, [taken])).toEqual([['a', 'Tape XL']]);
    expect(made(project, takeEdit('a', line)).work?.prices?.a).toEqual({ ...shop, line: 'air/tape' });
  });
});
