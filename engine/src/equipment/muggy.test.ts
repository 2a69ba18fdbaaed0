import { describe, expect, it } from 'vitest';
import { humidityRatio } from '../physics/air/index.ts';
import { scenario } from '../plan/scenario.ts';
import { latentBeside } from './muggy.ts';
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
  flow: 0.32,
  pressure: 101_325,
} as const;
const latent = (rows: readonly UnitRow[], sensible: number) =>
  latentBeside({ id: 'u', name: 'Unit', rows }, sensible, at, scenario());

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
