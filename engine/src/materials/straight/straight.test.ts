import { describe, expect, it } from 'vitest';
import type { MaterialLine, StraightPiece } from '../../plan/lines.ts';
import { goodOf } from '../goods/goodOf.ts';
import type { Own, PriceEntry, Stock } from '../result.ts';
import { sum } from '../sum.ts';

const foot = 0.3048;
const lengths = [8, 10, 12, 16].map((f) => f * foot);
const nothing: Own = { stock: [], prices: [], orders: [], deliveries: [], costs: {}, saw: 0, panels: [], caps: [] };

const line = (id: string, pieces: readonly StraightPiece[]): MaterialLine => ({
  id,
  trade: id.split('/')[0] as MaterialLine['trade'],
  what: 'Timber 2x6',
  kind: 'length',
  amount: pieces.reduce((a, p) => a + p.length * p.count, 0),
  pieces,
});
const listed = (lines: readonly MaterialLine[], own: Partial<Own> = {}) => {
  const pending = { ok: false, because: 'pending', paths: [] } as const;
  const { list } = sum(
    { own: { ...nothing, ...own }, list: pending, cut: pending, workings: {}, wanted: [] },
    { tasks: [], materials: lines, findings: [] },
  );
  if (!list.ok) throw new Error(list.because);
  return list.value;
};

/** Fewest metres of timber for the pieces: every sharing out into heaps, each on the shortest length that holds it. */
function fewestMetres(pieces: readonly number[], saw: number): number {
  const least = new Array<number>(2 ** pieces.length).fill(Infinity);
  least[0] = 0;
  for (let set = 1; set < 2 ** pieces.length; set++)
    for (let heap = set; heap > 0; heap = (heap - 1) & set) {
      if (!(heap & (set & -set))) continue;
      const own = pieces.filter((_, i) => heap & (1 << i));
      const long = own.reduce((a, x) => a + x, 0) + saw * (own.length - 1);
      const one = lengths.find((l) => l >= long - 1e-9) ?? Infinity;
      least[set] = Math.min(least[set]!, one + least[set ^ heap]!);
    }
  return least.at(-1)!;
}

describe('straight pieces', () => {
  it('are timber of which no sharing out over 8, 10, 12 and 16 ft takes fewer metres', () => {
    expect(goodOf(line('access/timber:2x6', [])).packs.map((p) => Math.round(p / foot))).toEqual([8, 10, 12, 16]);
    let seed = 9;
    const next = () => {
      seed = (seed * 48_271) % 2_147_483_647;
      return seed / 2_147_483_647;
    };
    for (let n = 0; n < 25; n++) {
      const saw = n % 2 ? 0.003175 : 0;
      const pieces = Array.from({ length: 6 }, () => Math.round(300 + 2700 * next()) / 1000);
      const all = pieces.map((length, i) => ({ name: `p${i}`, length, count: 1 }));
      const list = listed([line('access/timber:2x6', all)], { saw });
      const [made] = list.straight;
      expect(made?.plan.proved).toBe(true);
      expect(made?.plan.cost).toBeCloseTo(fewestMetres(pieces, saw), 6);
      // What the list buys is what the plan cuts.
      expect(list.lines.reduce((a, l) => a + l.bought, 0)).toBeCloseTo(made?.plan.cost ?? 0, 9);
      expect(list.lines.reduce((a, l) => a + l.need, 0)).toBeCloseTo(
        pieces.reduce((a, x) => a + x, 0),
        6,
      );
      expect(list.lines.every((l) => l.waste === 0)).toBe(true);
    }
  });

  it('are one line for each length bought, named by it', () => {
    const list = listed([line('access/timber:2x6', [{ name: 'a', length: 2.4, count: 3 }])]);
    expect(list.lines.map((l) => [l.id, l.what, l.pieces])).toEqual([
      ['access/timber:2x6 2438', 'Timber 2x6: lengths of 8 ft (2.44 m)', 3],
    ]);
  });

  it('are joined where lengths end, as many as a pipe takes, with no share of waste beside', () => {
    const pipe = { ...line('condensate/pipe', [{ name: 'Drain', length: 6.4, count: 1 }]), soldBy: 3.048 };
    const made = listed([pipe]);
    // Two whole lengths and 0.304 m of a third.
    expect(made.lines.map((l) => [l.id, l.pieces, l.waste])).toEqual([['condensate/pipe', 3, 0]]);
    const cut = made.straight[0]?.plan.bars.flatMap((b) => b.pieces.map((p) => p.length)) ?? [];
    expect(cut.reduce((a, x) => a + x, 0)).toBeCloseTo(6.4, 9);
    expect(cut.filter((x) => Math.abs(x - 3.048) < 1e-9).length).toBe(2);
  });

  it('come from what is at hand first, and from the length that a price names', () => {
    const pipe = { ...line('condensate/pipe', [{ name: 'Drain', length: 5, count: 1 }]), soldBy: 3.048 };
    const stock: Stock[] = [{ path: 'work.stock.s', name: 'Shed', line: 'condensate/pipe', each: 2, amount: '1' }];
    expect(listed([pipe]).lines[0]).toMatchObject({ pieces: 2, piece: 3.048 });
    expect(listed([pipe], { stock }).lines[0]).toMatchObject({ pieces: 1, atHand: 2 });
    const price: PriceEntry = {
      path: 'work.prices.p',
      name: 'Drain pipe',
      unit: '20 ft length',
      price: { low: 9, likely: 9, high: 9 },
      part: 'run',
    };
    expect(listed([pipe], { prices: [price] }).lines[0]).toMatchObject({
      pieces: 1,
      piece: 6.096,
      cost: { likely: 9 },
    });
    // A price by the foot is no length.
    const byFoot = listed([pipe], { prices: [{ ...price, unit: 'ft' }] }).lines[0];
    expect(byFoot).toMatchObject({ pieces: 2, piece: 3.048 });
    expect(byFoot?.cost?.likely).toBeCloseTo(20 * 9, 6);
  });
});

describe('where pieces are joined', () => {
  it('foam is butted wherever a length ends: as many lengths as its metres fill, and a piece at hand first', () => {
    const six = 6 * foot;
    const foam = (...pieces: readonly number[]): MaterialLine => ({
      ...line(
        'condensate/foam',
        pieces.map((length, i) => ({ name: `f${i}`, length, count: 1 })),
      ),
      soldBy: six,
    });
    // Pipe of the same pieces, each 4 ft, would take three lengths of 6 ft: 12 ft end to end take two.
    const two = listed([foam(4 * foot, 4 * foot, 4 * foot)], { saw: 0.003 });
    expect(two.lines[0]).toMatchObject({ pieces: 2, waste: 0, left: 0 });
    expect(two.straight[0]?.plan.bars.map((b) => b.rest.length)).toEqual([0, 0]);
    // 6.4 m and 1 m: 7.4 / 1.8288 = 4.05, so five; 0.3 m at hand leave 7.1 m, which four hold (7.315 m).
    expect(listed([foam(6.4, 1)]).lines[0]).toMatchObject({ pieces: 5 });
    const stock: Stock[] = [{ path: 'work.stock.s', name: 'Rest', line: 'condensate/foam', each: 0.3, amount: '1' }];
    expect(listed([foam(6.4, 1)], { stock }).lines[0]).toMatchObject({ pieces: 4, atHand: 0.3 });
  });

  it('timber is never joined: a member longer than any length is told of by its name, and is not cut', () => {
    const long = line('access/timber:2x6', [{ name: 'Plank', length: 5.2, count: 2 }]);
    const made = listed([long]);
    expect(made.straight).toEqual([]);
    expect(made.tooLong).toEqual([
      { what: 'Timber 2x6', piece: 'Plank', length: 5.2, most: 16 * foot, path: 'work.stock' },
    ]);
  });
});
