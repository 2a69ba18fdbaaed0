import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { enthalpy, humidityRatio, saturationRatio, specificVolume } from '../../physics/air/index.ts';
import type { UnitModel, UnitRow } from '../result.ts';
import { unitAt } from '../unitAt.ts';
import { apparatusDewPoint, bypassAt } from './bypass.ts';
import { type Coil, coilOf, slopeOf, standardAir } from './fit.ts';
import { type CoilAt, coilOutput, latentWith } from './operate.ts';

const sea = 101_325;
/** An invented row. */
const row: UnitRow = {
  mode: 'cooling',
  speed: 'most',
  outdoor: 35,
  indoor: 26.7,
  indoorWetBulb: 19.4,
  capacity: 7000,
  power: 2000,
  airflow: 0.33,
  sensibleShare: 0.74,
  defrostCounted: false,
};
const fitted = (): Coil => {
  const coil = coilOf(row);
  if (!coil) throw new Error('the row states all it needs');
  return coil;
};
const rated = { t: 26.7, w: humidityRatio({ t: 26.7, wetBulb: 19.4 }, sea) };
/** m³/s of that air that weigh what the row's standard air does. */
const ratedFlow = 0.33 * standardAir * specificVolume(rated.t, rated.w, sea);
const at: CoilAt = { entering: rated, flow: ratedFlow, pressure: sea, capacity: 7000, slope: 0.03 };
const output = (more: Partial<CoilAt>) => {
  const found = coilOutput(fitted(), { ...at, ...more });
  if (!found) throw new Error('within reach');
  return found;
};

describe('a coil', () => {
  it('at its rating gives back its row, whatever the slope', () => {
    for (const slope of [0, 0.03, 0.1]) {
      const { sensible, latent } = output({ slope });
      expect(sensible + latent).toBeCloseTo(7000, 6);
      expect(sensible / (sensible + latent)).toBeCloseTo(0.74, 9);
    }
  });

  it('gives up just the heat that its air loses, and its surface lies on the saturation line', () => {
    const { surface, bypass, sensible, latent } = output({ flow: 0.28 });
    const massFlow = 0.28 / specificVolume(rated.t, rated.w, sea);
    const w = saturationRatio(surface, sea) + bypass * (rated.w - saturationRatio(surface, sea));
    const t = surface + bypass * (rated.t - surface);
    const lost = massFlow * 1000 * (enthalpy(rated.t, rated.w) - enthalpy(t, w));
    expect(sensible + latent).toBeCloseTo(lost, 6);
    expect(bypass).toBeCloseTo(bypassAt(fitted().conductance, massFlow), 12);
  });

  it('of air drier than its surface takes sensible heat only, on the dry line', () => {
    const entering = { t: 26.7, w: 0.0066 };
    const { sensible, latent, surface, bypass } = output({ entering });
    expect(latent).toBe(0);
    expect(saturationRatio(surface, sea)).toBeGreaterThan(entering.w);
    const massFlow = ratedFlow / specificVolume(26.7, entering.w, sea);
    const dryLine = massFlow * 1000 * (1.006 + 1.86 * entering.w) * (1 - bypass) * (26.7 - surface);
    expect(sensible).toBeCloseTo(dryLine, 6);
    expect(sensible).toBeCloseTo(7000 * (1 + 0.03 * (surface - fitted().surface)), 6);
  });

  it.each([
    ['half the flow less a little', { flow: 0.16 }],
    ['air far from its rating', { entering: { t: 40, w: 0.02 } }],
    ['air so cold that it would ice over', { entering: { t: 17, w: 0.006 }, capacity: 9000 }],
  ])('says nothing of %s', (_name, more) => {
    expect(coilOutput(fitted(), { ...at, ...more })).toBeUndefined();
  });

  it('with more air gives more heat and a larger share of it sensible, and damper air more latent', () => {
    const air = fc.record({
      t: fc.double({ min: 22, max: 29, noNaN: true }),
      rh: fc.double({ min: 0.4, max: 0.65, noNaN: true }),
    });
    fc.assert(
      fc.property(air, fc.double({ min: 0.22, max: 0.42, noNaN: true }), ({ t, rh }, flow) => {
        const entering = { t, w: humidityRatio({ t, rh }, sea) };
        const [less, more, damper] = [
          coilOutput(fitted(), { ...at, entering, flow }),
          coilOutput(fitted(), { ...at, entering, flow: flow * 1.1 }),
          coilOutput(fitted(), { ...at, entering: { t, w: entering.w * 1.05 }, flow }),
        ];
        if (!less || !more || !damper) return;
        const share = (x: { sensible: number; latent: number }) => x.sensible / (x.sensible + x.latent);
        expect(more.sensible).toBeGreaterThan(less.sensible);
        expect(share(more)).toBeGreaterThanOrEqual(share(less) - 1e-9);
        expect(damper.latent).toBeGreaterThanOrEqual(less.latent - 1e-9);
      }),
      { seed: 20261125, numRuns: 300 },
    );
  });

  it('turned down to the sensible load dries as much as it does at full load, and less below', () => {
    const { sensible, latent } = output({});
    expect(latentWith(fitted(), sensible, at)).toBeCloseTo(latent, 6);
    expect(latentWith(fitted(), 0.6 * sensible, at)).toBeLessThan(0.6 * latent);
    expect(latentWith(fitted(), 0.3 * sensible, at)).toBe(0);
  });
});

describe('fitting', () => {
  it('says no coil where a row states what none could give', () => {
    expect(coilOf({ ...row, sensibleShare: 0.2 })).toBeUndefined();
    expect(coilOf({ ...row, airflow: 0.05 })).toBeUndefined();
  });

  it('reads the compressor’s slope off rows of other air, and nothing off a single row', () => {
    // Made with a slope of 0.025: the surface at which the same coil meets drier air is where such a row comes from.
    const entering = { t: 26.7, w: humidityRatio({ t: 26.7, wetBulb: 17 }, sea) };
    const flow = 0.33 * standardAir * specificVolume(entering.t, entering.w, sea);
    const made = coilOutput(fitted(), { ...at, entering, flow, slope: 0.025 });
    if (!made) throw new Error('within reach');
    const capacity = made.sensible + made.latent;
    const other = { ...row, indoorWetBulb: 17, capacity, sensibleShare: made.sensible / capacity };
    expect(slopeOf([row, other])?.likely).toBeCloseTo(0.025, 6);
    expect(slopeOf([row])).toBeUndefined();
  });

  it('finds no surface where the line never meets saturation', () => {
    expect(apparatusDewPoint({ t: 26, w: 0.012 }, { t: 25, w: 0.004 }, sea)).toBeNaN();
  });
});

describe('a unit with such a coil', () => {
  const unit: UnitModel = { id: 'u', name: 'Unit', rows: [row] };
  const asked = {
    mode: 'cooling',
    outdoor: 35,
    entering: 26.7,
    enteringHumidity: rated.w,
    flow: ratedFlow,
    pressure: sea,
    speed: 'most',
  } as const;

  it('loses what its blower adds beyond the sheet, and draws it', () => {
    const [plain, fan] = [unitAt(unit, asked), unitAt(unit, { ...asked, fanHeat: () => 120 })];
    if (!plain.ok || !fan.ok) throw new Error('within its sheet');
    expect(fan.value.sensible).toBeCloseTo(plain.value.sensible - 120, 9);
    expect(fan.value.power).toBeCloseTo(plain.value.power + 120, 9);
  });

  it('is out of range beyond its flow, and keeps the sheet’s share where it states no wet bulb', () => {
    expect(unitAt(unit, { ...asked, flow: 0.1 })).toMatchObject({ ok: false, because: 'out-of-range' });
    const { indoorWetBulb: _none, ...bare } = row;
    const dry = unitAt({ ...unit, rows: [bare] }, asked);
    expect(dry.ok && dry.value.sensible).toBeCloseTo(0.74 * 7000, 9);
  });
});
