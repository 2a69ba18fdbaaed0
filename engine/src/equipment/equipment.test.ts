import { describe, expect, it } from 'vitest';
import { attempt } from '../plan/outcome.ts';
import type { UnitModel, UnitRow } from './result.ts';
import { defrostLoss, readSheet } from './sheet.ts';
import { altitudeFactor, unitAt } from './unitAt.ts';

const heating = (outdoor: number, capacity: number, power: number): UnitRow => ({
  mode: 'heating',
  speed: 'most',
  outdoor,
  indoor: 21.1,
  capacity,
  power,
  defrostCounted: false,
});
/** An invented unit. */
const unit: UnitModel = {
  id: 'u',
  name: 'Unit',
  rows: [heating(8, 8000, 2300), heating(-8, 7000, 2800), heating(-25, 5000, 2900)],
};
const at = { entering: 20, enteringHumidity: 0.006, flow: 0.33, pressure: 101_325, speed: 'most' } as const;

describe('reading a data sheet', () => {
  it('gives its rows exactly and the straight line between them', () => {
    expect(readSheet(unit, 'heating', 'most', -8)).toMatchObject({ capacity: 7000, power: 2800 });
    expect(readSheet(unit, 'heating', 'most', 0).capacity).toBeCloseTo(7500, 9);
  });

  it.each([-25.1, 8.1, -60])('says nothing at %s °C, beyond its ends', (outdoor) => {
    expect(attempt(() => readSheet(unit, 'heating', 'most', outdoor))).toEqual({
      ok: false,
      because: 'out-of-range',
      paths: ['candidates.u.rows'],
    });
  });

  it('reads the row whose air is nearest where the sheet states several at one outdoor temperature', () => {
    const warmer = { ...heating(-8, 6800, 2900), indoor: 24 };
    const twice: UnitModel = { ...unit, rows: [warmer, ...unit.rows] };
    expect(readSheet(twice, 'heating', 'most', -8).capacity).toBe(7000);
    const nearWarm = (row: UnitRow) => Math.abs(row.indoor - 24);
    expect(readSheet(twice, 'heating', 'most', -8, nearWarm).capacity).toBe(6800);
  });

  it('says a speed is missing where it has no row of it', () => {
    expect(attempt(() => readSheet(unit, 'heating', 'least', 0))).toMatchObject({ ok: false, because: 'missing' });
  });
});

describe('defrost and altitude', () => {
  it('cost most at 35 °F and nothing at 17 and 45 °F (from memory: 10 CFR 430 appendix M)', () => {
    expect(defrostLoss(1.667, 0.1)).toBeCloseTo(0.1, 9);
    expect(defrostLoss(-8.34, 0.1)).toBe(0);
    expect(defrostLoss(7.3, 0.1)).toBe(0);
    const given = unitAt(unit, { mode: 'heating', outdoor: 1.667, ...at });
    expect(given.ok && given.value.sensible / readSheet(unit, 'heating', 'most', 1.667).capacity).toBeCloseTo(0.9, 6);
  });

  it('takes a share of the missing density, none at sea level', () => {
    expect(altitudeFactor(101_325, 0.5)).toBe(1);
    expect(altitudeFactor(0.8 * 101_325, 0.5)).toBeCloseTo(0.9, 12);
  });
});
