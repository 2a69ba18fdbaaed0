import { describe, expect, it } from 'vitest';
import { fraction, seeded } from '../../../physics/schedule/seeded.ts';
import { householdOf } from './household.ts';

/** Use by the hour of the day against its mean: quiet nights, more in the evening. Invented. */
const hourly = [5, 5, 5, 5, 5, 6, 9, 13, 12, 10, 10, 10, 11, 10, 9, 9, 10, 13, 17, 18, 16, 14, 11, 9];
const hourlyMean = hourly.reduce((a, b) => a + b, 0) / 24;
/** What days at home, days away and their scatter make of a mean day. */
const [workday, weekend, away, scatter] = [0.94, 1.15, 0.4, 0.18];
const dayMean = ((5 * workday + 2 * weekend) / 7) * Math.exp(scatter ** 2 / 2) * (1 - 0.02 * (1 - away));

/**
 * A log of some days that begin in autumn or winter, of a household that uses up to a fifth more in midwinter, in weeks that are
 * like the one before; two meters off by a hundredth. `heater`: W for each degree below 10 °C that a second heater takes.
 */
function logOf(seed: number, days: number, heater = 0) {
  const r = seeded(seed);
  const within = (low: number, high: number): number => low + (high - low) * fraction(r);
  const normal = (): number => Math.sqrt(-2 * Math.log(fraction(r))) * Math.cos(2 * Math.PI * fraction(r));
  const [base, amplitude, begin, gain] = [within(3, 15), within(0, 0.2), within(-75, 30), 1 + 0.01 * normal()];
  const column = (): Float64Array => new Float64Array(24 * days);
  const [housePower, unitPower, outdoor] = [column(), column(), column()];
  let [week, front, day] = [0, 0, 1];
  for (let h = 0; h < outdoor.length; h++) {
    if (h % (7 * 24) === 0) week = 0.5 * week + 0.05 * normal();
    if (h % 24 === 0) {
      front = 0.8 * front + 0.6 * normal();
      const which = (h / 24) % 7 > 4 ? weekend : workday;
      day = which * (1 + week) * Math.exp(scatter * normal()) * (fraction(r) < 0.02 ? away : 1);
    }
    const winter = Math.cos((2 * Math.PI * (begin + h / 24)) / 365);
    const t = 4 - 12 * winter + 4 * front - 3 * Math.cos(((h - 3) * Math.PI) / 12);
    const unit = Math.max(0, 60 * (15 - t));
    const shape = (hourly[h % 24] ?? 0) / hourlyMean;
    const used = (base / 0.024) * (1 + amplitude * winter) * day * shape * (1 + 0.2 * normal());
    outdoor[h] = t;
    unitPower[h] = unit * (1 + 0.01 * normal());
    housePower[h] = (unit + used + heater * Math.max(0, 10 - t)) * gain;
  }
  const columns = { housePower, unitPower, outdoor };
  const { household } = householdOf({ first: 24 * 20_000, count: outdoor.length, columns, ends: {} });
  if (!household) throw new Error('not told');
  return { household, yearly: base * dayMean };
}

describe('what a household uses, by logs of planted ones', () => {
  it.each([21, 42, 120, 365])('holds the mean of its year in nine of ten logs of %i days', (days) => {
    const all = Array.from({ length: 60 }, (_, k) => logOf(7 * k + 1, days));
    const held = all.filter(({ household: { daily }, yearly }) => daily.low <= yearly && yearly <= daily.high).length;
    expect(held).toBeGreaterThanOrEqual(50);
    const wide = all.map(({ household: { daily } }) => (daily.high - daily.low) / daily.likely);
    expect(wide.reduce((a, b) => a + b, 0) / 60).toBeLessThan(0.6);
  });

  it('hardly ever takes a household that is lit longer in winter for one that heats', () => {
    const called = Array.from({ length: 100 }, (_, k) => logOf(7 * k + 1, 84)).filter((x) => x.household.heats);
    expect(called.length).toBeLessThanOrEqual(3);
  });

  it('says of a heater among it that it follows the cold', () => {
    const called = Array.from({ length: 20 }, (_, k) => logOf(7 * k + 1, 84, 30)).filter((x) => x.household.heats);
    expect(called.length).toBeGreaterThanOrEqual(19);
  });
});
