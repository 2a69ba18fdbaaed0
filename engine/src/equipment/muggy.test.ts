import { describe, expect, it } from 'vitest';
import { demo } from '../../test/demos.ts';
import { evaluate } from '../index.ts';
import type { LoadsResult } from '../loads/result.ts';
import { humidityRatio } from '../physics/air/index.ts';
import { scenario } from '../plan/scenario.ts';
import { latentBeside, muggyDay } from './muggy.ts';
import type { UnitModel, UnitRow } from './result.ts';
import { unitAt } from './unitAt.ts';

const sheet = { mode: 'cooling', indoor: 26.7, indoorWetBulb: 19.4, defrostCounted: false } as const;
/** An invented unit of two speeds. */
const most: UnitRow = {
  ...sheet,
  speed: 'most',
  outdoor: 28,
  capacity: 7000,
  power: 2000,
  airflow: 0.33,
  sensibleShare: 0.74,
};
const least: UnitRow = {
  ...sheet,
  speed: 'least',
  outdoor: 28,
  capacity: 2500,
  power: 450,
  airflow: 0.2,
  sensibleShare: 0.8,
};
const at = {
  outdoor: 28,
  entering: 25,
  enteringHumidity: humidityRatio({ t: 25, rh: 0.55 }, 101_325),
  roomHumidity: humidityRatio({ t: 25, rh: 0.55 }, 101_325),
  flow: 0.32,
  pressure: 101_325,
} as const;
const latent = (rows: readonly UnitRow[], sensible: number) =>
  latentBeside({ id: 'u', name: 'Unit', rows }, sensible, at, scenario()).latent;

describe('moisture taken out beside a sensible load', () => {
  const output = (unit: UnitModel) => {
    const found = unitAt(unit, { ...at, mode: 'cooling', speed: 'most' });
    if (!found.ok) throw new Error('within its sheet');
    return found.value;
  };
  const full = output({ id: 'u', name: 'Unit', rows: [most] });

  it('is all it can above its highest speed, and its share of the hours with one speed', () => {
    expect(latent([most, least], full.sensible + 1)).toBe(full.latent);
    expect(latent([most], 0.4 * full.sensible)).toBeCloseTo(0.4 * full.latent, 9);
  });

  it('grows with the load, without a step where it begins to run on', () => {
    const loads = Array.from({ length: 60 }, (_, i) => 100 * i);
    const out = loads.map((x) => latent([most, least], x));
    const steps = out.slice(1).map((x, i) => x - (out[i] ?? 0));
    expect(out[0]).toBe(0);
    expect(Math.max(...steps)).toBeLessThan(150);
    expect(Math.min(...steps)).toBeGreaterThanOrEqual(0);
  });
});

describe('what leaking returns bring', () => {
  // Mixing by mass and steam tables (2985 Pa at 24 °C, 3962 Pa at 28.8 °C), by hand: rooms at 24 °C and 50 %, outdoors 28.8 °C
  // and 62 %, at 82 705 Pa: 11.43 and 19.04 g/kg; a twentieth of the flow comes out of the attic.
  it('reaches the coil as damp as the mixture is', () => {
    const { cooling } = evaluate(demo('juniper-flat'), {}).plan.agreement;
    expect(cooling?.enteringHumidity).toBeCloseTo(0.95 * 0.01143 + 0.05 * 0.01904, 5);
  });

  it('counts against the unit while it runs', () => {
    const unit: UnitModel = { id: 'u', name: 'Unit', rows: [most] };
    const damp = { ...at, enteringHumidity: at.roomHumidity + 0.0004 };
    const full = unitAt(unit, { ...damp, mode: 'cooling', speed: 'most' });
    if (!full.ok) throw new Error('within its sheet');
    const load = (likely: number) => ({ low: likely, likely, high: likely, drivers: [] });
    const sums = { sensible: load(0.8 * full.value.sensible), latent: load(500), hour: 15.5 };
    const loads = { cooling: { ok: true, value: sums } } as unknown as LoadsResult;
    const { brought, spare } = muggyDay(unit, damp, loads);
    // Half of the load, so two fifths of the hours: 0.4 * 0.32 m³/s / 0.8594 m³/kg * 0.4 g/kg * 2501 kJ/kg.
    expect(brought.likely).toBeCloseTo(149, 0);
    expect(spare.likely).toBeCloseTo(0.4 * full.value.latent - 500 - brought.likely, 9);
  });
});
