import { describe, expect, it } from 'vitest';
import { checkProject } from './open.ts';

const is = (value: number) => ({ value, known: 'nameplate' });
const problemsOf = (power: object) => {
  const { ok, problems } = checkProject({ schema: 1, power });
  return { ok, at: problems.map((p) => p.path.join('.')) };
};

describe('a power system that cannot be so', () => {
  it.each([
    ['an efficiency above one', { inverter: { efficiency: is(1.2) } }, 'power.inverter.efficiency'],
    ['a round trip above one', { battery: { roundTrip: is(1.05) } }, 'power.battery.roundTrip'],
    ['a compass direction beyond the circle', { arrays: { a: { azimuth: is(400) } } }, 'power.arrays.a.azimuth'],
    ['an hour beyond the day', { tariff: { bands: { b: { to: is(25) } } } }, 'power.tariff.bands.b.to'],
    ['a month beyond the year', { tariff: { bands: { b: { toMonth: is(13) } } } }, 'power.tariff.bands.b.toMonth'],
    ['a negative price', { tariff: { price: is(-0.1) } }, 'power.tariff.price'],
    ['a negative hour of use', { household: { hours: [...Array(23).fill(1), -1] } }, 'power.household.hours'],
  ])('is refused at its place: %s', (_name, power, path) => {
    const found = problemsOf(power);
    expect(found.ok).toBe(false);
    expect(
      found.at.some((at) => at.startsWith(path)),
      found.at.join(', '),
    ).toBe(true);
  });

  it.each([
    ['a battery of nothing', { battery: { energy: is(0) } }, 'power.battery.energy'],
    ['a direction left of north', { arrays: { a: { azimuth: is(-90) } } }, 'power.arrays.a.azimuth'],
    ['panels that look down', { arrays: { a: { tilt: is(120) } } }, 'power.arrays.a.tilt'],
    ['a day of 23 hours', { household: { hours: Array(23).fill(1) } }, 'power.household.hours'],
    ['a day in which nothing is used', { household: { hours: Array(24).fill(0) } }, 'power.household.hours'],
    [
      'a charger beyond its generator',
      { generator: { power: is(2000), charging: is(3500) } },
      'power.generator.charging',
    ],
    [
      'a generator that stops before it starts',
      { generator: { startBelow: is(0.6), stopAbove: is(0.4) } },
      'power.generator.stopAbove',
    ],
  ])('is kept and asked about: %s', (_name, power, path) => {
    expect(problemsOf(power)).toEqual({ ok: true, at: [path] });
  });

  it('is not asked about where all is well', () => {
    const power = {
      household: { hours: Array(24).fill(1) },
      generator: { power: is(6000), charging: is(3000), startBelow: is(0.25), stopAbove: is(0.8) },
    };
    expect(problemsOf(power)).toEqual({ ok: true, at: [] });
  });
});
