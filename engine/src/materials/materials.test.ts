import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { MaterialLine, Task } from '../plan/lines.ts';
import { goodOf } from './goods/goodOf.ts';
import { listLine } from './list/listLine.ts';
import { mergedLines } from './list/merged.ts';
import { amountIn, soldIn } from './list/soldIn.ts';
import type { ListLine, Order, Own, PriceEntry, ShoppingList, Stock } from './result.ts';
import { sum } from './sum.ts';

const nothing: Own = { stock: [], prices: [], orders: [], deliveries: [], costs: {}, saw: 0, panels: [], caps: [] };
const own = (part: Partial<Own>): Own => ({ ...nothing, ...part });
const price = (name: string, likely: number, part: Partial<PriceEntry> = {}): PriceEntry => ({
  path: `work.prices.${name}`,
  name,
  price: { low: likely, likely, high: likely },
  part: 'run',
  ...part,
});
const run = (id: string, amount: number): MaterialLine => ({
  id: `air/duct:${id}`,
  trade: 'air',
  what: `Flexible duct for “${id}”`,
  kind: 'length',
  amount,
  for: `routes.ducts.sections.${id}`,
  like: { id: 'flexible 203', what: 'Flexible duct, 8 in' },
});
const line = (id: string, kind: 'count' | 'length' | 'area', amount: number): MaterialLine => ({
  id,
  trade: id.split('/')[0] as MaterialLine['trade'],
  what: `The ${id}`,
  kind,
  amount,
});
const list = (lines: readonly MaterialLine[], have: Own = nothing, tasks: readonly Task[] = []): ShoppingList => {
  const empty = { ok: false, because: 'pending', paths: [] } as const;
  const { list } = sum(
    { own: have, list: empty, cut: empty, workings: {}, wanted: [] },
    { tasks, materials: lines, findings: [] },
  );
  if (!list.ok) throw new Error(list.because);
  return list.value;
};
const found = (l: ShoppingList, id: string): ListLine => {
  const it = l.lines.find((x) => x.id === id);
  if (!it) throw new Error(`no ${id} on the list`);
  return it;
};

describe('a list worked by hand', () => {
  const lines = [
    run('a', 6),
    run('b', 8),
    line('air/tape', 'length', 20),
    line('air/mastic', 'count', 2.5),
    line('air/hangers', 'count', 0),
    line('circuit/between', 'length', 12),
    line('equipment/outdoor-feet', 'count', 4),
    line('lineset/feet', 'count', 4),
    line('air/transfer:x', 'area', 0.04),
  ];
  const l = list(
    lines,
    own({
      stock: [{ path: 's', name: 'left from the shed', amount: '10 ft', line: 'air/flexible 203' }],
      prices: [
        price('bag', 60, { duct: 'flexible 203', piece: 7.62 }),
        price('long bag', 100, { duct: 'flexible 203', piece: 15.24 }),
        price('Mastic', 21, { unit: 'tub' }),
      ],
    }),
  );

  it('adds like runs, takes off what is at hand, and buys the packs that cost least', () => {
    // 14 m; 10 ft at hand leave 10.952 m: two bags of 25 ft for 120, or one of 50 ft for 100.
    expect(found(l, 'air/flexible 203')).toMatchObject({
      need: 14,
      atHand: 3.048,
      pieces: 1,
      piece: 15.24,
      bought: 15.24,
    });
    expect(found(l, 'air/flexible 203').waste).toBe(0);
    expect(found(l, 'air/flexible 203').left).toBeCloseTo(15.24 + 3.048 - 14, 12);
    expect(found(l, 'air/flexible 203').cost?.likely).toBe(100);
  });

  it('rounds up to rolls, tubs and reels, each with its own waste', () => {
    // 20 m + 15 % = 23 m of a 54.864 m roll; 2.5 tubs + 25 % = 3.125; 12 m and 1.5 m an end = 15 m of a 50 ft reel.
    expect(found(l, 'air/tape')).toMatchObject({ pieces: 1, as: 'roll', piece: 180 * 0.3048 });
    expect(found(l, 'air/mastic')).toMatchObject({ pieces: 4, as: 'tub', cost: { low: 84, likely: 84, high: 84 } });
    expect(found(l, 'circuit/between')).toMatchObject({ pieces: 1, piece: 15.24, waste: 3 });
  });

  it('leaves out what is not needed, takes once what two trades name, and buys by measure what is made to measure', () => {
    expect(l.lines.some((x) => x.id === 'air/hangers')).toBe(false);
    expect(found(l, 'equipment/outdoor-feet')).toMatchObject({ need: 4, pieces: 4 });
    expect(found(l, 'equipment/outdoor-feet').from.map((f) => f.trade)).toEqual(['equipment', 'lineset']);
    expect(found(l, 'air/transfer:x')).toMatchObject({ as: 'measure', pieces: 1, bought: 0.04 });
  });

  it('costs what has a price by part of the job, and counts what has none', () => {
    expect(l.cost).toMatchObject({ likely: 184, priced: 2, unpriced: 5 });
    expect(l.cost.scopes.ducts).toMatchObject({ likely: 184, priced: 2, unpriced: 2 });
    expect(l.cost.scopes.unit).toMatchObject({ likely: 0, unpriced: 1 });
  });

  it('is in the order in which things must be there', () => {
    expect(l.lines.map((x) => x.by)).toEqual(['lift', 'cut', 'cut', 'cut', 'connect', 'connect', 'close']);
  });
});

describe('every list', () => {
  const words = ['air/tape', 'air/mastic', 'air/collars:a', 'condensate/pipe', 'circuit/wire:a', 'circuit/conduit:a'];
  const some = fc.array(
    fc.record({ word: fc.constantFrom(...words), amount: fc.double({ min: 0, max: 300, noNaN: true }) }),
    { maxLength: 8 },
  );
  const asLines = (parts: readonly { word: string; amount: number }[]): MaterialLine[] =>
    parts.map(({ word, amount }, i) => ({
      ...line(word, word.includes('mastic') || word.includes('collars') ? 'count' : 'length', amount),
      id: `${word.split(':')[0]}:${i}`,
      like: { id: word, what: word },
    }));

  it('needs what the trades say, in all and of each thing', () => {
    fc.assert(
      fc.property(some, (parts) => {
        const merged = mergedLines(asLines(parts));
        for (const m of merged) {
          const said = parts.filter((p) => m.like === p.word).reduce((a, p) => a + p.amount, 0);
          expect(m.need).toBeCloseTo(said, 6);
        }
        const all = parts.reduce((a, p) => a + p.amount, 0);
        expect(merged.reduce((a, m) => a + m.need, 0)).toBeCloseTo(all, 6);
      }),
      { seed: 1, numRuns: 200 },
    );
  });

  it('buys enough with waste, and one piece less would not be enough', () => {
    fc.assert(
      fc.property(some, fc.double({ min: 0, max: 100, noNaN: true }), (parts, hand) => {
        for (const m of mergedLines(asLines(parts))) {
          const amount = m.kind === 'count' ? `${hand}` : `${hand} m`;
          const have = hand > 1e-3 ? [{ path: 's', name: 's', line: m.id, amount }] : [];
          const { line: l } = listLine(m, own({ stock: have }));
          const wanted = l.need * (1 + l.wasteShare) - l.atHand;
          const slack = 1e-6 * Math.max(1, l.need);
          expect(l.bought).toBeGreaterThanOrEqual(wanted - slack);
          if (l.pieces > 0) expect(l.bought - l.piece).toBeLessThan(l.need + l.waste - l.atHand + slack);
          expect(l.bought).toBeCloseTo(l.pieces * l.piece, 6);
        }
      }),
      { seed: 2, numRuns: 200 },
    );
  });
});

describe('what was ordered', () => {
  const order = (line: string, amount?: string): Order => ({
    path: `items.${line}`,
    name: line,
    state: 'ordered',
    line,
    ...(amount === undefined ? {} : { amount }),
  });

  it('is held against the list: as ordered, more, less, new, no longer needed', () => {
    const l = list(
      [run('a', 14), line('air/mastic', 'count', 2.5), line('air/tape', 'length', 20), line('air/boots', 'count', 3)],
      own({
        orders: [
          order('air/flexible 203', '1 bag'),
          order('air/mastic', '4 tubs'),
          order('air/tape', '2 rolls'),
          order('air/gone', '1'),
        ],
      }),
    );
    expect(found(l, 'air/flexible 203')).toMatchObject({ since: 'more', pieces: 2, openPieces: 1 });
    expect(found(l, 'air/mastic')).toMatchObject({ since: 'as-ordered', openPieces: 0 });
    expect(found(l, 'air/tape').since).toBe('less');
    expect(found(l, 'air/boots').since).toBe('new');
    expect(l.gone.map((g) => g.line)).toEqual(['air/gone']);
  });

  it('covers a run that is there already, by its entry alone', () => {
    const there: Order = { path: 'items.a', name: 'a', state: 'fitted', of: 'routes.ducts.sections.a' };
    const l = list([run('a', 6), run('b', 4)], own({ orders: [there] }));
    expect(found(l, 'air/flexible 203').ordered).toBeCloseTo(6, 12);
    expect(found(l, 'air/flexible 203').openPieces).toBe(1);
  });

  it('without a readable amount takes nothing off, and is named', () => {
    const l = list(
      [line('air/tape', 'length', 20)],
      own({ orders: [order('air/tape')], stock: [stock('air/tape', 'lots')] }),
    );
    expect(l.unused.map((u) => u.because)).toEqual(['amount', 'no-amount']);
    expect(found(l, 'air/tape')).toMatchObject({ atHand: 0, ordered: 0, pieces: 1 });
  });
});

const stock = (line: string, amount: string): Stock => ({ path: `work.stock.${line}`, name: line, line, amount });

describe('prices', () => {
  it('of one name and no word which are not used, and said', () => {
    const l = list(
      [line('air/mastic', 'count', 1)],
      own({ prices: [price('Mastic, grey', 20), price('Mastic, white', 22)] }),
    );
    expect(found(l, 'air/mastic').price).toBeUndefined();
    expect(l.unused.map((u) => u.because)).toEqual(['several', 'several']);
  });

  it('of another size are never taken', () => {
    const size = (name: string) => list([run('a', 6)], own({ prices: [price(name, 62, { unit: '25 ft bag' })] }));
    expect(found(size('Flexible duct 8 in, R-8'), 'air/flexible 203').cost?.likely).toBe(62);
    expect(found(size('Flexible duct 6 in, R-8'), 'air/flexible 203').cost).toBeUndefined();
  });
});

describe('packs in words', () => {
  it.each([
    ['25 ft bag', 'length', 7.62],
    ['bag', 'length', 7.62],
    ['per ft', 'length', 0.3048],
    ['/m', 'length', 1],
    ['box of 100', 'count', 100],
    ['each', 'count', 1],
    ['4 x 8 ft sheet', 'area', 32 * 0.3048 ** 2],
    ['48 x 120 in', 'area', 5760 * 0.0254 ** 2],
    ['pallet', 'length', undefined],
    ['0 ft', 'length', undefined],
  ] as const)('%s of %s holds %s', (unit, kind, held) => {
    const usual = kind === 'length' ? 7.62 : 1;
    if (held === undefined) expect(soldIn(unit, kind, usual)).toBeUndefined();
    else expect(soldIn(unit, kind, usual)).toBeCloseTo(held, 9);
  });

  it.each([
    ['3', 'count', 100, 3],
    ['2 boxes', 'count', 100, 200],
    ['2 bags', 'length', 7.62, 15.24],
    ['2', 'length', 7.62, 15.24],
    ['25 ft', 'length', 10, 7.62],
    ['-2 ft', 'length', 10, undefined],
    ['some', 'length', 10, undefined],
  ] as const)('%s of %s in packs of %s is %s', (text, kind, piece, amount) => {
    if (amount === undefined) expect(amountIn(text, kind, piece)).toBeUndefined();
    else expect(amountIn(text, kind, piece)).toBeCloseTo(amount, 9);
  });
});

describe('tools and what is forgotten', () => {
  const task = (id: string, holdPoint: Task['holdPoint'], tools: readonly string[]): Task => ({
    id,
    trade: 'air',
    what: id,
    holdPoint,
    duration: { low: 1, likely: 1, high: 1 },
    people: 2,
    after: [],
    safeStops: ['a'],
    cautions: [],
    tools,
  });

  it('a tool is named once, at the first hold point that needs it', () => {
    const tasks = [task('b', 'connect', ['Drill', 'Level']), task('a', 'cut', ['drill'])];
    const { tools } = list([run('a', 6)], nothing, tasks);
    expect(tools.map((t) => [t.what, t.by, t.tasks])).toEqual([
      ['Drill', 'cut', ['b', 'a']],
      ['Level', 'connect', ['b']],
    ]);
  });

  it('is asked for by what is on the list, and ticked off', () => {
    const ids = (have: Own) =>
      list([run('a', 6)], have)
        .forgotten.filter((f) => !f.atHand)
        .map((f) => f.id);
    expect(ids(nothing)).toContain('strap-tool');
    expect(ids(nothing)).not.toContain('vacuum-pump');
    expect(ids(own({ stock: [{ path: 's', name: 's', line: 'forgotten/strap-tool' }] }))).not.toContain('strap-tool');
  });

  it('every line of every trade has a shop, a hold point and a part of the job', () => {
    for (const trade of ['air', 'loads', 'lineset', 'commissioning'])
      expect(goodOf(line(`${trade}/whatever`, 'count', 1))).toMatchObject({ packs: [1], waste: { share: 0 } });
  });
});
