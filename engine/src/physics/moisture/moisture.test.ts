import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { interstitial, type MonthAir, magnusPressure, magnusTemperature, vapourExcess } from './index.ts';
import { leastFactor } from './surface.ts';
import { tangentLine } from './tangent.ts';

const seeded = { seed: 13788, numRuns: 200 };
const films = { inside: 0.13, outside: 0.04 };
const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const layer = fc.record({ resistance: number(0, 2), sd: number(0, 3) });
const month: fc.Arbitrary<MonthAir> = fc
  .record({ outdoor: number(-30, 30), inRh: number(0.2, 1), outRh: number(0.2, 1) })
  .map(({ outdoor, inRh, outRh }) => ({
    indoor: 20,
    outdoor,
    indoorVapour: inRh * magnusPressure(20),
    outdoorVapour: outRh * magnusPressure(outdoor),
    days: 30,
  }));
const wall = fc.array(layer, { minLength: 1, maxLength: 6 }).filter((ls) => ls.some((l) => l.sd > 0.01));
const year = fc.array(month, { minLength: 12, maxLength: 12 });

describe('saturation', () => {
  it('comes back through its inverse on both sides of freezing', () => {
    for (const t of [-40, -10, -0.001, 0, 0.001, 25, 60])
      expect(magnusTemperature(magnusPressure(t))).toBeCloseTo(t, 9);
    expect(magnusTemperature(0)).toBe(Number.NEGATIVE_INFINITY);
  });
});

describe('the pressure line', () => {
  it('lies at or below every bound and never bends down', () => {
    fc.assert(
      fc.property(fc.array(number(50, 3000), { minLength: 3, maxLength: 20 }), (bound) => {
        const sd = bound.map((_, i) => i);
        const { at, pressure } = tangentLine(sd, bound, () => false);
        for (let k = 1; k < at.length; k++) {
          const [a = 0, b = 0] = [at[k - 1], at[k]];
          const slope = ((pressure[k] ?? 0) - (pressure[k - 1] ?? 0)) / (b - a);
          for (let i = a + 1; i < b; i++)
            expect((pressure[k - 1] ?? 0) + slope * (i - a)).toBeLessThanOrEqual((bound[i] ?? 0) * (1 + 1e-6));
          const next =
            ((pressure[k + 1] ?? Number.POSITIVE_INFINITY) - (pressure[k] ?? 0)) / ((at[k + 1] ?? b + 1) - b);
          expect(next).toBeGreaterThanOrEqual(slope);
        }
      }),
      seeded,
    );
  });

  it('touches a plane that holds water although it would pass below', () => {
    expect(tangentLine([0, 1, 2], [1000, 900, 500], () => false).at).toEqual([0, 2]);
    expect(tangentLine([0, 1, 2], [1000, 900, 500], (i) => i === 1).at).toEqual([0, 1, 2]);
  });
});

describe('water inside a construction', () => {
  it('is neither made nor lost, and never less than nothing', () => {
    fc.assert(
      fc.property(wall, year, (layers, months) => {
        const r = interstitial(layers, films, months);
        const scale = Math.abs(r.entered) + Math.abs(r.leaving) + r.most + 1e-9;
        expect(Math.abs(r.entered - r.leaving - r.left)).toBeLessThan(1e-9 * scale);
        for (const p of r.planes) {
          expect(Math.min(...p.held)).toBeGreaterThanOrEqual(0);
          expect(Math.max(...p.held)).toBeLessThanOrEqual(r.most);
        }
      }),
      seeded,
    );
  });

  it('grows or stays as the rooms get damper', () => {
    fc.assert(
      fc.property(wall, year, number(1, 1.5), (layers, months, more) => {
        const damper = months.map((m) => ({ ...m, indoorVapour: m.indoorVapour * more }));
        const most = interstitial(layers, films, months).most;
        expect(interstitial(layers, films, damper).most).toBeGreaterThanOrEqual(most * (1 - 1e-6) - 1e-9);
      }),
      seeded,
    );
  });

  it('is none where both sides are alike, and says when a surface itself is wet', () => {
    const still = { indoor: 20, outdoor: 20, indoorVapour: 1000, outdoorVapour: 1000, days: 30 };
    const layers = [{ resistance: 1, sd: 1 }];
    expect(interstitial(layers, films, [still])).toMatchObject({ start: undefined, most: 0, left: 0, entered: 0 });
    expect(interstitial(layers, films, [{ ...still, indoorVapour: 3000 }]).surfaceWet).toEqual([true]);
  });

  it('refuses layers it cannot follow vapour through', () => {
    expect(() => interstitial([{ resistance: 1, sd: 0 }], films, [])).toThrow('hold back no vapour');
    expect(() =>
      interstitial(
        [
          { resistance: 1, sd: 1 },
          { resistance: -1, sd: 1 },
        ],
        films,
        [],
      ),
    ).toThrow('layer 2');
    expect(() => interstitial([{ resistance: Number.NaN, sd: 1 }], films, [])).toThrow('layer 1');
  });
});

describe('surfaces and rooms', () => {
  it('have no least factor where outdoors is the warmer side', () => {
    expect(leastFactor({ indoor: 20, outdoor: 25, vapour: 1000 }, 0.8)).toBeUndefined();
  });

  it('grow no damper than their class, and alike with outdoors from 20 °C on', () => {
    expect(vapourExcess(3, 5)).toBeCloseTo(607.5, 9);
    expect(vapourExcess(5, 30)).toBe(0);
  });
});
