import { describe, expect, it } from 'vitest';
import { chanceOf } from '../chance.ts';
import type { ClimateMonth, Ties } from '../result.ts';
import { monthsOfYear } from '../yearFacts.ts';
import { dayWalk, walkDays } from './dayWalk.ts';
import { tiesOfMonths } from './ties.ts';
import { winterOf } from './winterOf.ts';
import { winterMaker } from './winterYear.ts';
import { monthlySpread, monthsOfOneYear } from './yearMonths.ts';

const months: ClimateMonth[] = Array.from({ length: 12 }, (_, i) => ({
  month: i + 1,
  mean: 8 - 10 * Math.cos((2 * Math.PI * i) / 12),
  dailyRange: 7,
  relativeHumidity: 0.7,
  wind: 4,
  clearness: 0.42,
  sun: 1,
}));
const place = { latitude: 52, longitude: 0, elevation: 50, timeZone: 0 };
const mean = (x: readonly number[]): number => x.reduce((a, b) => a + b, 0) / x.length;
const spread = (x: readonly number[]): number => Math.sqrt(mean(x.map((v) => (v - mean(x)) ** 2)));

describe('many winters', () => {
  it('are the same for the same seed, each without the others, and differ', () => {
    const [a, b] = [winterMaker({ months, place, seed: 1 }), winterMaker({ months, place, seed: 1 })];
    expect(a.year(3)).toEqual(b.year(3));
    expect(a.year(3).dryBulb).not.toEqual(a.year(4).dryBulb);
    expect(winterMaker({ months, place, seed: 2 }).year(3).dryBulb).not.toEqual(a.year(3).dryBulb);
  });

  it('stand about the coldest month, north and south', () => {
    expect(winterOf(months)).toEqual([9, 10, 11, 0, 1, 2, 3]);
    const south = months.map((m, i) => ({ ...m, mean: 8 + 10 * Math.cos((2 * Math.PI * i) / 12) }));
    expect(winterOf(south)).toEqual([3, 4, 5, 6, 7, 8, 9]);
    expect(winterMaker({ months: south, place, seed: 1 })).toMatchObject({ firstDay: 90, days: 214 });
  });

  it('have months that differ from year to year by what is stated, about what was given', () => {
    const all = Array.from({ length: 3000 }, (_, n) =>
      monthsOfOneYear(months, 7, tiesOfMonths(months).now, chanceOf(n)),
    );
    const ofYear = spread(months.map((m) => m.mean));
    for (const at of [0, 5, 10]) {
      const means = all.map((y) => y[at]?.mean ?? Number.NaN);
      const given = months[at]?.mean ?? 0;
      expect(Math.abs(mean(means) - given)).toBeLessThan(0.1);
      expect(spread(means) / monthlySpread(given, ofYear)).toBeGreaterThan(0.95);
      expect(spread(means) / monthlySpread(given, ofYear)).toBeLessThan(1.05);
      expect(spread(all.map((y) => (y[at]?.clearness ?? 0) / 0.42))).toBeCloseTo(0.1, 2);
    }
  });

  it('keep a whole year of numbers that are numbers, also under polar night', () => {
    for (const latitude of [52, 78, -40]) {
      const year = winterMaker({ months, place: { ...place, latitude }, seed: 1 }).year(0);
      for (const x of [
        year.dryBulb,
        year.dewPoint,
        year.windSpeed,
        year.ghi,
        year.dni,
        year.dhi,
        year.relativeHumidity,
      ])
        expect(x.length === 8760 && x.every(Number.isFinite)).toBe(true);
      expect(year.windSpeed.every((v) => v >= 0)).toBe(true);
    }
  });

  it('differ in their coldest month, which one year made again and again does not', () => {
    const maker = winterMaker({ months, place, seed: 1 });
    const januaries = Array.from({ length: 12 }, (_, n) => monthsOfYear(maker.year(n))[0]?.mean ?? Number.NaN);
    expect(spread(januaries)).toBeGreaterThan(0.8);
  });
});

describe('days that follow each other', () => {
  // A first-order regression has this covariance from its own recursion: no formula of ours.
  it('are tied as asked once each month’s mean is taken out, by counting 60,000 of them', () => {
    const ties: Ties = tiesOfMonths(months);
    const walk = walkDays(dayWalk(ties), 60_000, chanceOf(9));
    const off = [0, 1, 2].map((c) =>
      Array.from({ length: 2000 }, (_, m) => {
        const days = walk.slice(m * 30, m * 30 + 30).map((d) => d[c] ?? 0);
        return days.map((x) => x - mean(days));
      }),
    );
    const tie = (a: number, b: number, lag: number): number =>
      mean((off[a] ?? []).flatMap((x, m) => x.slice(0, 30 - lag).map((v, d) => v * (off[b]?.[m]?.[d + lag] ?? 0))));
    for (const a of [0, 1, 2])
      for (const b of [0, 1, 2]) {
        expect(Math.abs(tie(a, b, 0) - (ties.now[a]?.[b] ?? 0))).toBeLessThan(0.03);
        expect(Math.abs(tie(a, b, 1) - (ties.next[a]?.[b] ?? 0))).toBeLessThan(0.05);
      }
  });

  it('never run away, whatever few days of a file said', () => {
    const odd: Ties = {
      ...tiesOfMonths(months),
      next: [
        [0.99, 0.9, 0.9],
        [0.9, 0.99, -0.9],
        [0.9, 0.9, 0.99],
      ],
    };
    const walk = walkDays(dayWalk(odd), 5000, chanceOf(1));
    expect(Math.max(...walk.flat().map(Math.abs))).toBeLessThan(30);
  });
});
