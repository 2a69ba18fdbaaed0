import type { LogTable } from '@kneewall/project';
import { describe, expect, it } from 'vitest';
import { fraction, seeded } from '../../../physics/schedule/seeded.ts';
import { besideUnit } from './besideUnit.ts';

/** A household of 150 W at night, 250 by day and 900 from 18 to 21 o'clock: 7.35 kWh a day. */
const householdAt = (hour: number): number => (hour < 7 ? 150 : hour >= 18 && hour < 21 ? 900 : 250);
const daily = (7 * 150 + 14 * 250 + 3 * 900) / 1000;

type Columns = LogTable['columns'];

/** Hours of a log with a unit that follows the cold, an inverter that keeps 45 W and takes 1.08 W for each; scatter of 10 W. */
function logOf(days: number, change: (columns: Required<Pick<Columns, 'housePower'>> & Columns) => Columns): LogTable {
  const r = seeded(7);
  const n = 24 * days;
  const made = (of: (h: number) => number) => Float64Array.from({ length: n }, (_, h) => of(h));
  const outdoor = made((h) => 6 + 12 * Math.sin((2 * Math.PI * h) / 24 / 180) + 3 * Math.sin((2 * Math.PI * h) / 24));
  const unitPower = outdoor.map((t) => Math.max(0, 60 * (15 - t)));
  const housePower = unitPower.map((p, h) => p + householdAt(h % 24) + 20 * (fraction(r) - 0.5));
  const sunPower = made((h) => Math.max(0, 3000 * Math.sin((((h % 24) - 6) * Math.PI) / 12)));
  const battery = housePower.map((p, h) => ((sunPower[h] ?? 0) > 1 ? p - (sunPower[h] ?? 0) : 45 + 1.08 * p));
  return {
    kind: 'log',
    time: made((h) => 20_000 * 86_400 + 3600 * h),
    columns: change({ outdoor, unitPower, housePower, sunPower, battery }),
    spans: [],
    step: 3600,
    rows: n,
    faults: {},
    asks: [],
  };
}

describe('what a log says beside the unit', () => {
  it('gives the household by day and hour back, and what the inverter keeps', () => {
    const found = besideUnit(logOf(120, (c) => c));
    expect(found?.household?.daily.likely).toBeCloseTo(daily, 1);
    expect(found?.household?.days).toBe(120);
    for (const h of [3, 12, 19]) expect(Math.abs((found?.household?.hours[h] ?? 0) - householdAt(h))).toBeLessThan(8);
    expect(found?.inverter?.idle.likely).toBeCloseTo(45, 3);
    expect(found?.inverter?.each.likely).toBeCloseTo(1.08, 6);
    expect(found?.untold).toEqual([]);
  });

  it('does not mind which way a battery counts', () => {
    const found = besideUnit(
      logOf(120, ({ battery, ...c }) => ({ ...c, ...(battery ? { battery: battery.map((p) => -p) } : {}) })),
    );
    expect(found?.inverter?.idle.likely).toBeCloseTo(45, 3);
  });

  it('parts off what follows the weather where the unit is not logged and warm days stand beside cold ones', () => {
    const found = besideUnit(
      logOf(360, ({ outdoor, housePower }) => ({ ...(outdoor ? { outdoor } : {}), housePower })),
    );
    // 60 W for each degree are 1.44 kWh a day; days that swing by 3 K about the point round the corner.
    expect(found?.byWeather?.slope).toBeGreaterThan(1.37);
    expect(found?.byWeather?.slope).toBeLessThan(1.47);
    expect(Math.abs((found?.byWeather?.base ?? 0) - daily)).toBeLessThan(0.4);
  });

  it.each([
    [
      'a meter at the grid',
      ({ housePower, sunPower, unitPower }: Columns) => ({
        ...(unitPower ? { unitPower } : {}),
        ...(housePower ? { housePower: housePower.map((p, h) => p - (sunPower?.[h] ?? 0)) } : {}),
      }),
      'net-meter',
    ],
    [
      'a house without its unit in one winter',
      ({ housePower }: Columns) => ({ ...(housePower ? { housePower } : {}) }),
      'no-unit',
    ],
    ['a battery alone', ({ battery }: Columns) => ({ ...(battery ? { battery } : {}) }), 'no-house'],
    ['a battery whose sun nobody logged', ({ sunPower: _, ...c }: Columns) => c, 'no-sun'],
    [
      'a battery beside a generator',
      ({ battery, ...c }: Columns) => ({ ...c, ...(battery ? { battery: battery.map((p) => 0.3 * p) } : {}) }),
      'never-alone',
    ],
  ])('says in words that %s teaches nothing', (_, change, why) => {
    const found = besideUnit(logOf(60, change));
    expect(found?.untold.map((u) => u.why)).toContain(why);
    expect(found?.inverter).toBeUndefined();
  });

  it('is silent where a log has neither column', () => {
    expect(besideUnit(logOf(30, ({ outdoor }) => ({ ...(outdoor ? { outdoor } : {}) })))).toBeUndefined();
  });
});
