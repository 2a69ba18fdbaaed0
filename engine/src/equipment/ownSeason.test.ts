import { describe, expect, it } from 'vitest';
import type { LoadsResult } from '../loads/result.ts';
import { characterOf, ownSeason, type Upstream } from './ownSeason.ts';
import { usCooling, usHeating } from './published.ts';
import { europeanHeating } from './publishedEurope.ts';
import type { UnitModel, UnitRow } from './result.ts';
import { heatingSeason } from './season/season.ts';
import { helpedHours } from './season.ts';

const row = (mode: UnitRow['mode'], speed: UnitRow['speed'], f: number, btu: number, power: number): UnitRow => ({
  mode,
  speed,
  outdoor: Math.round(((f - 32) / 1.8) * 10) / 10,
  indoor: 21.1,
  capacity: btu / 3.413,
  power,
  defrostCounted: true,
});
/** The invented machine of the worked example, its temperatures rounded to a tenth of a degree as on a sheet. */
const rows = [
  row('heating', 'most', 47, 26_000, 2050),
  row('heating', 'most', 35, 22_400, 2150),
  row('heating', 'most', 17, 17_800, 1950),
  row('heating', 'least', 62, 11_200, 520),
  row('heating', 'least', 47, 9000, 560),
  row('heating', 'between', 35, 14_200, 1080),
  row('cooling', 'most', 95, 24_000, 1920),
  row('cooling', 'most', 82, 25_600, 1650),
  row('cooling', 'least', 82, 10_200, 520),
  row('cooling', 'least', 67, 10_900, 400),
  row('cooling', 'between', 87, 17_200, 1050),
];
const unit: UnitModel = { id: 'u', name: 'Unit', rows };
const ratio = (x: ReturnType<typeof usHeating>) => (x.season.ok ? x.season.value.ratio * 3.413 : Number.NaN);

describe('published figures from a sheet', () => {
  // The seasonal factors of the worked examples (computed outside the project): 9.79928 and 18.11702 Btu/Wh.
  it('are those of the rating where the sheet holds the tests’ rows', () => {
    expect(ratio(usHeating(unit))).toBeCloseTo(9.79928, 4);
    expect(ratio(usCooling(unit))).toBeCloseTo(18.11702, 4);
  });

  it('name the rows that a sheet lacks', () => {
    const without: UnitModel = { ...unit, rows: rows.filter((r) => r.speed !== 'between') };
    expect(usHeating(without).season).toMatchObject({ ok: false, because: 'missing' });
    expect(usHeating(without).missing).toMatchObject([{ mode: 'heating', speed: 'between' }]);
    expect(europeanHeating(without).missing.length).toBe(8);
  });

  it('of a single speed take the older lines', () => {
    const one = rows.filter((r) => r.speed === 'most').map((r): UnitRow => ({ ...r, speed: 'rated' }));
    const value = ratio(usHeating({ ...unit, rows: one }));
    expect(value).toBeGreaterThan(6);
    expect(value).toBeLessThan(ratio(usHeating(unit)));
  });

  it('by the European bins come from highest and lowest speed at its four points', () => {
    const at = (speed: UnitRow['speed'], outdoor: number, capacity: number, cop: number): UnitRow => ({
      ...(rows[0] as UnitRow),
      speed,
      outdoor,
      capacity,
      power: capacity / cop,
    });
    const four = [-7, 2, 7, 12].flatMap((t, i) => [
      at('most', t, 5000 + 500 * i, 2.5 + 0.5 * i),
      at('least', t, 2000, 2.5 + 0.5 * i),
    ]);
    const found = europeanHeating({ ...unit, rows: four });
    if (!found.season.ok) throw new Error('all points are there');
    // Every efficiency lies between those at the coldest and the warmest bin, cycling taken off.
    expect(found.season.value.ratio).toBeGreaterThan(2.2);
    expect(found.season.value.ratio).toBeLessThan(4);
    expect(found.season.value.rows[3]?.backup).toBeCloseTo(0, 9);
  });
});

/** A year in which a house needs each of these for so many hours. */
const year = (...met: readonly (readonly [number, number, number])[]): Upstream =>
  ({
    climate: { pressure: { ok: true, value: 101_325 } },
    loads: {
      year: {
        ok: true,
        value: { heating: { met: met.map(([outdoor, load, hours]) => ({ outdoor, load, hours })) } },
      } as unknown as LoadsResult['year'],
    },
  }) as unknown as Upstream;

describe('the project’s own year', () => {
  const most = rows[0] as UnitRow;
  it('at a row of the sheet gives that row’s efficiency', () => {
    const { ratio: own, basis } = ownSeason(unit, year([most.outdoor, most.capacity, 1000]), undefined);
    expect(own.likely).toBeCloseTo(most.capacity / most.power, 9);
    expect(basis).toBe('hours');
  });

  it('is worse for stopping and starting, for backup, and open where the sheet ends', () => {
    const steady = ownSeason(unit, year([8.3, 4000, 1000]), undefined).ratio;
    const cycling = ownSeason(unit, year([8.3, 400, 1000]), undefined);
    expect(cycling.ratio.likely).toBeLessThan(steady.likely);
    expect(cycling.character.cycling).toBe(1);
    const beyond = ownSeason(unit, year([-20, 4000, 1000]), undefined);
    expect(beyond.hoursBeyond).toBe(1000);
    expect(beyond.ratio.low).toBeCloseTo(1, 9);
    expect(beyond.ratio.likely).toBeGreaterThan(1.5);
    expect(ownSeason(unit, year([-20, 4000, 1000]), -15).ratio.high).toBeCloseTo(1, 9);
  });

  it('counts help for certain only where the sheet says so', () => {
    const hours = (t: number, load: number, least?: number) => helpedHours(unit, year([t, load, 10]), least);
    expect(hours(0, 9000)).toEqual({ low: 10, likely: 10, high: 10 });
    expect(hours(0, 3000)).toEqual({ low: 0, likely: 0, high: 0 });
    expect(hours(-20, 3000)).toEqual({ low: 0, likely: 0, high: 10 });
    expect(hours(-20, 9000)).toEqual({ low: 10, likely: 10, high: 10 });
    expect(hours(-20, 3000, -15)).toEqual({ low: 10, likely: 10, high: 10 });
  });

  it('of a season without load has no character', () => {
    expect(characterOf(heatingSeason([]))).toEqual({ outdoor: 0, cycling: 0, backup: 0 });
  });
});
