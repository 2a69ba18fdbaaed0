import { describe, expect, it } from 'vitest';
import { cutBars } from './bars/cutBars.ts';
import { cutCoils } from './coils/cutCoils.ts';
import { packSheets } from './sheets/packSheets.ts';

/** Numbers from 0 to 1 that come out the same everywhere. */
function numbersFrom(seed: number): () => number {
  let x = seed;
  return () => {
    x = (x * 48_271) % 2_147_483_647;
    return x / 2_147_483_647;
  };
}

const chosen = <T>(items: readonly T[], set: number): T[] => items.filter((_, i) => set & (1 << i));

/** Fewest that must be bought: every sharing out among what is at hand, piece by piece of it, and the rest among new ones. By definition, slow. */
function fewestBought(
  n: number,
  hand: readonly ((set: number) => boolean)[],
  bought: (set: number) => boolean,
): number {
  const least = new Array<number>(2 ** n).fill(Infinity);
  least[0] = 0;
  for (let set = 1; set < 2 ** n; set++)
    for (let group = set; group > 0; group = (group - 1) & set)
      if (group & (set & -set) && bought(group)) least[set] = Math.min(least[set]!, 1 + least[set ^ group]!);
  const from = (set: number, k: number): number => {
    let best = k < hand.length ? from(set, k + 1) : least[set]!;
    if (k < hand.length)
      for (let group = set; group > 0; group = (group - 1) & set)
        if (hand[k]?.(group)) best = Math.min(best, from(set ^ group, k + 1));
    return best;
  };
  return from(2 ** n - 1, 0);
}

/** Whether pieces can be freed from a sheet: every first cut at every whole place, every sharing out. */
function canBeCut(pieces: readonly (readonly [number, number])[], w: number, h: number): boolean {
  const [first] = pieces;
  if (!first) return true;
  if (w <= 0 || h <= 0 || pieces.reduce((sum, [a, b]) => sum + a * b, 0) > w * h) return false;
  if (pieces.length === 1) return (first[0] <= w && first[1] <= h) || (first[1] <= w && first[0] <= h);
  for (let share = 1; share < 2 ** pieces.length - 1; share++) {
    const [a, b] = [chosen(pieces, share), chosen(pieces, 2 ** pieces.length - 1 - share)];
    for (let x = 1; x < w; x++) if (canBeCut(a, x, h) && canBeCut(b, w - x, h)) return true;
    for (let y = 1; y < h; y++) if (canBeCut(a, w, y) && canBeCut(b, w, h - y)) return true;
  }
  return false;
}

describe('stock at hand', () => {
  it('leaves as few bars to buy as going through every sharing out finds', () => {
    const next = numbersFrom(13);
    const handUsed: number[] = [];
    for (let n = 0; n < 40; n++) {
      const kerf = n % 3 === 0 ? 0.25 : 0;
      const lengths = Array.from({ length: 7 }, () => 1 + Math.floor(32 * next()) / 4);
      const hand = Array.from({ length: 1 + (n % 3) }, () => 2 + Math.floor(40 * next()) / 4);
      const fits = (most: number) => (set: number) =>
        chosen(lengths, set).reduce((sum, x) => sum + x + kerf, -kerf) <= most + 1e-9;
      const plan = cutBars({
        pieces: lengths.map((length, i) => ({ id: `p${i}`, length, count: 1 })),
        stock: [
          { id: 'bar', length: 10, cost: 1 },
          ...hand.map((length, i) => ({ id: `hand ${i}`, length, cost: 0, count: 1 })),
        ],
        kerf,
        remnantLeast: 1,
      });
      const least = fewestBought(7, hand.map(fits), fits(10));
      expect([plan.cost, plan.proved, plan.bound]).toEqual([least, true, least]);
      expect(plan.bars.filter((b) => b.stock === 'bar').length).toBe(least);
      handUsed.push(plan.bars.length - least);
      // Nothing at hand is cut twice.
      const used = plan.bars.map((b) => b.stock).filter((s) => s !== 'bar');
      expect(new Set(used).size).toBe(used.length);
    }
    expect(Math.max(...handUsed)).toBe(3);
  });

  it('leaves as few sheets to buy as every first cut at every place finds, and never claims more than it proved', () => {
    const next = numbersFrom(17);
    let saved = 0;
    for (let n = 0; n < 30; n++) {
      const pieces = Array.from({ length: 5 }, () => [1 + Math.floor(5 * next()), 1 + Math.floor(5 * next())] as const);
      const hand = Array.from(
        { length: 1 + (n % 2) },
        () => [2 + Math.floor(5 * next()), 2 + Math.floor(4 * next())] as const,
      );
      const fits =
        ([w, h]: readonly [number, number]) =>
        (set: number) =>
          canBeCut(chosen(pieces, set), w, h);
      const plan = packSheets({
        pieces: pieces.map(([width, height], i) => ({ id: `p${i}`, width, height, count: 1, turns: true })),
        stock: [
          { id: 'sheet', width: 7, height: 6, cost: 1 },
          ...hand.map(([width, height], i) => ({ id: `hand ${i}`, width, height, cost: 0, count: 1 })),
        ],
        kerf: 0,
        trim: 0,
        remnantLeast: 1,
      });
      const least = fewestBought(5, hand.map(fits), fits([7, 6]));
      expect(plan.bound).toBeLessThanOrEqual(least);
      expect([plan.cost, plan.proved]).toEqual([least, true]);
      saved += fewestBought(5, [], fits([7, 6])) - least;
    }
    expect(saved).toBeGreaterThan(3);
  });

  it('names what is left of it', () => {
    const stock = [
      { id: 'bar', length: 10, cost: 1 },
      { id: 'hand a', length: 8, cost: 0, count: 1 },
    ];
    const { bars } = cutBars({ pieces: [{ id: 'p', length: 5, count: 1 }], stock, kerf: 0, remnantLeast: 1 });
    expect(bars.map((b) => b.rest.remnant)).toEqual(['hand a rest 1']);
  });

  it('feeds runs of flexible duct before a coil is opened, and keeps a long run whole where it can', () => {
    const job = { coil: 7.5, sleeve: 0.1, rule: 'fewest-splices', splicesMost: 1 } as const;
    const runs = [4, 3, 6].map((length, i) => ({ id: `${i}`, length }));
    const hand = (length: number, count = 1) => [{ id: 'hand a', length, count }];
    // 4 and 3 fill a coil and 6 takes one; 6.5 m at hand takes the place of one of them.
    expect(cutCoils({ ...job, runs }).bought).toBe(2);
    expect(cutCoils({ ...job, runs, atHand: hand(6.5) })).toMatchObject({ bought: 1, coilsLeast: 1, proved: true });
    expect(cutCoils({ ...job, runs, atHand: hand(6.5, 3) })).toMatchObject({ bought: 0, coilsLeast: 0, proved: true });
    const long = [{ id: 'l', length: 12 }];
    expect(cutCoils({ ...job, runs: long })).toMatchObject({ bought: 2, splices: [{ run: 'l', count: 1 }] });
    expect(cutCoils({ ...job, runs: long, atHand: hand(15) })).toMatchObject({ bought: 0, splices: [], proved: true });
  });

  it('gives every run its length from coils and from what is at hand, and takes nothing twice', () => {
    const next = numbersFrom(23);
    for (let n = 0; n < 60; n++) {
      const lengths = Array.from({ length: 2 + (n % 9) }, () => 0.5 + 11 * next());
      const atHand = Array.from({ length: n % 4 }, (_, i) => ({
        id: `h${i}`,
        length: 1 + 14 * next(),
        count: 1 + (n % 2),
      }));
      const rule = n % 2 ? 'fewest-coils' : 'fewest-splices';
      const plan = cutCoils({
        ...{ coil: 7.5, sleeve: 0.1, rule, splicesMost: n % 3, atHand },
        runs: lengths.map((length, i) => ({ id: `${i}`, length })),
      });
      expect(plan.bought).toBeGreaterThanOrEqual(plan.coilsLeast);
      for (const h of atHand) {
        const own = plan.coils.filter((c) => c.from === h.id);
        expect(own.length).toBeLessThanOrEqual(h.count);
        for (const c of own) expect(c.length).toBeCloseTo(h.length, 8);
      }
      for (const c of plan.coils) expect(c.rest).toBeGreaterThanOrEqual(-1e-9);
      lengths.forEach((length, i) => {
        const parts = plan.coils.flatMap((c) => c.pieces).filter((p) => p.run === `${i}`);
        expect(parts.reduce((sum, p) => sum + p.length, 0) - 0.1 * (parts.length - 1)).toBeCloseTo(length, 6);
      });
    }
  });
});
