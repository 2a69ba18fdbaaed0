import { readFileSync } from 'node:fs';
import { applyEdit, priceChanges, readPrices } from '@kneewall/project';
import { beforeAll, describe, expect, it } from 'vitest';
import { evaluate, type ShoppingList } from '../src/index.ts';
import { demo, demoNames } from './demos.ts';

const csv = readFileSync(new URL('../../demos/files/invented-prices.csv', import.meta.url), 'utf8');
const read = readPrices(csv);
const lists: Record<string, ShoppingList> = {};

beforeAll(() => {
  for (const name of demoNames) {
    const list = evaluate(demo(name), {}).plan.trades.materials?.list;
    if (list?.ok) lists[name] = list.value;
  }
});

it('every row of the file says that it is invented, and can be read', () => {
  const rows = csv.trim().split('\n').slice(1);
  expect(rows.every((r) => r.endsWith(',invented'))).toBe(true);
  expect([read.taken.length, read.left, read.problems]).toEqual([rows.length, [], []]);
});

describe.each(demoNames)('the prices of %s', (name) => {
  it('are those of the file, taken in as the Buy page takes them: its rows taken again change nothing', () => {
    const project = demo(name);
    const names = new Set(Object.values(project.work?.prices ?? {}).map((p) => p.name));
    const own = read.taken.filter(({ entry }) => names.has(entry.name));
    expect(own.length).toBeGreaterThan(50);
    const again = priceChanges(project, { taken: own }).reduce((p, { path, after }, seq) => {
      const before = p.work?.prices?.[path.at(-1) ?? ''];
      return applyEdit(p, { device: 'd', seq, path, before, after }).value;
    }, project);
    expect(again.work?.prices).toEqual(project.work?.prices);
  });

  it('make a sum of pieces times price, all of it usable', () => {
    const list = lists[name];
    expect(list?.unused).toEqual([]);
    const lines = list?.lines.filter((l) => l.cost) ?? [];
    const sum = lines.reduce((a, l) => a + Math.max(1, l.pieces) * (l.price?.each.likely ?? 0), 0);
    expect(list?.cost.likely).toBeCloseTo(sum, 6);
    expect(list?.cost.unpriced).toBeLessThanOrEqual(3);
  });
});

it('come to what is reckoned by hand: parts of Tern Ledge from pieces and the file’s prices', () => {
  const { scopes, unpriced } = lists['tern-ledge']?.cost ?? {};
  expect(unpriced).toBe(0);
  // The unit at its own price, 4 pads, 4 feet, thermostat.
  expect(scopes?.unit.likely).toBeCloseTo(3600 + 4 * 9.5 + 4 * 7 + 185, 6);
  // Conductors, 9 lengths of conduit, breaker, disconnect, whip, 4 glands, 2 labels, cable between, 2 glands, straps.
  expect(scopes?.electrical.likely).toBeCloseTo(58 + 9 * 9 + 26 + 31 + 24 + 4 * 3.2 + 2 * 2 + 68 + 2 * 3.5 + 13, 6);
  // 3 lengths of pipe, the trap's elbows, tee, 7 hangers, cement, union; 2 clean-outs, adapter, 2 couplings (6.4 m), 2 elbows.
  const pipe = 3 * 8.5 + 4 * 2.8 + 2.6 + 7 * 1.9 + 17 + 6.5;
  expect(scopes?.drain.likely).toBeCloseTo(pipe + 2 * 4.1 + 1.6 + 2 * 0.9 + 2 * 1.1, 6);
  // Stand, a panel behind it, sleeve, set, 15 clips, 2 tapes, cover.
  expect(scopes?.lineset.likely).toBeCloseTo(148 + 64 + 21 + 320 + 15 * 3.4 + 2 * 14 + 24, 6);
});

it('keep the range of a price that is one: the stand of Tern Ledge at 140 to 160, by hand', () => {
  const price = { value: { low: 140, likely: 148, high: 160 }, known: 'estimated' } as const;
  const named = demo('tern-ledge').work?.prices ?? {};
  const stand = Object.entries(named).find(([, p]) => p.name === 'Stand');
  const project = demo('tern-ledge');
  const ranged = {
    ...project,
    work: { ...project.work, prices: { ...named, [stand?.[0] ?? '']: { ...stand?.[1], price } } },
  };
  const list = evaluate(ranged, {}).plan.trades.materials?.list;
  const { low, likely, high } = list?.ok ? list.value.cost : { low: 0, likely: 0, high: 0 };
  expect(likely).toBeCloseTo(lists['tern-ledge']?.cost.likely ?? 0, 6);
  expect([likely - low, high - likely]).toEqual([expect.closeTo(8, 6), expect.closeTo(12, 6)]);
});

it('leave nothing of Juniper Flat without one: its old ducts are not bought', () => {
  expect(lists['juniper-flat']?.cost.unpriced).toBe(0);
});

it.each(demoNames)('no thing of %s is on its list twice, under one name or for one purpose', (name) => {
  const lines = lists[name]?.lines ?? [];
  const sources = lines.flatMap((l) => l.from.map((f) => f.id));
  expect(new Set(lines.map((l) => l.what)).size).toBe(lines.length);
  // Timber of several lengths is one source for each; nothing else stands under two lines.
  const once = sources.filter((id) => !id.startsWith('access/timber'));
  expect(new Set(once).size).toBe(once.length);
  const about = (word: RegExp) => lines.filter((l) => word.test(l.what)).map((l) => l.id);
  expect(about(/plywood|panel across/i)).toEqual(name === 'tern-ledge' ? ['lineset/backing'] : []);
  expect(about(/clamp band/i).length).toBeLessThan(2);
});
