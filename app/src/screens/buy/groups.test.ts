import type { ListLine } from '@kneewall/engine';
import { describe, expect, it } from 'vitest';
import { groupSums, groupsOf, linesWith } from './groups.ts';

const line = (id: string, more: Partial<ListLine>): ListLine =>
  ({
    id,
    what: id,
    shop: 'heating',
    by: 'cut',
    open: 1,
    from: [{ id, trade: 'air', what: id, amount: 1 }],
    ...more,
  }) as ListLine;
const cost = (low: number, likely: number, high: number) => ({ cost: { low, likely, high } });
const lines = [
  line('Flexible duct, 8 in', { ...cost(50, 60, 80) }),
  line('Boot', { by: 'close', open: 0, ...cost(10, 10, 10) }),
  line('Breaker', {
    shop: 'electrical',
    by: 'connect',
    from: [{ id: 'b', trade: 'circuit', what: 'For the fan', amount: 1 }],
  }),
];

describe('the list in groups', () => {
  it('has every line once, whichever way, hold points in their order', () => {
    for (const way of ['when', 'shop', 'trade'] as const)
      expect(
        groupsOf(lines, way)
          .flatMap((g) => g.lines)
          .map((l) => l.id)
          .sort(),
      ).toEqual(lines.map((l) => l.id).sort());
    expect(groupsOf(lines, 'when').map((g) => g.key)).toEqual(['cut', 'connect', 'close']);
    expect(groupsOf([], 'when')).toEqual([]);
  });
  it('sums what has a price and counts what has none', () => {
    expect(groupSums(lines)).toEqual({ things: 3, open: 2, unpriced: 1, cost: { low: 60, likely: 70, high: 90 } });
    expect(groupSums(lines.slice(2))).toEqual({ things: 1, open: 1, unpriced: 1 });
  });
  it('is searched for every word, in any order, small or capital, also in what a thing is for and in its shop', () => {
    const found = (typed: string) => linesWith(lines, typed).map((l) => l.id);
    expect(found('DUCT flex')).toEqual(['Flexible duct, 8 in']);
    expect(found('fan')).toEqual(['Breaker']);
    expect(found('electrical supplier')).toEqual(['Breaker']);
    expect(found('duct breaker')).toEqual([]);
    expect(found('  ')).toEqual(lines.map((l) => l.id));
  });
});
