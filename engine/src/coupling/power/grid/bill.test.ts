import { describe, expect, it } from 'vitest';
import type { PriceBand, Tariff } from '../../../offgrid/result.ts';
import { bandAt, bill } from './bill.ts';

const flat: Tariff = { price: 0.1, bands: [], demand: 0, feedIn: 0 };
const band = (from: number, to: number, price: number, fromMonth = 1, toMonth = 12): PriceBand => ({
  id: `${from}-${to}`,
  from,
  to,
  fromMonth,
  toMonth,
  price,
});
const steady = (watts: number, stepsPerHour = 4): Float64Array =>
  Float64Array.from({ length: 8760 * stepsPerHour }, () => watts);

// By hand: a steady kilowatt is 8760 kWh; 365 days hold 1825 hours between 17 and 22; November to March has 151 days.
describe('a bill by the hour', () => {
  it('is the flat price times what is taken', () => {
    expect(bill(steady(1000), flat, 0.25).total).toBeCloseTo(876, 6);
    expect(bill(steady(1000, 1), flat, 1).total).toBeCloseTo(876, 6);
  });
  it('takes dear hours at their own price, over midnight and over New Year too', () => {
    const evening = bill(steady(1000), { ...flat, bands: [band(17, 22, 0.3)] }, 0.25);
    expect(evening.total).toBeCloseTo(1825 * 0.3 + (8760 - 1825) * 0.1, 6);
    expect(evening.bands.map((b) => Math.round(b.energy))).toEqual([1825, 6935]);
    const night = bill(steady(1000), { ...flat, bands: [band(23, 5, 0.05)] }, 0.25);
    expect(night.total).toBeCloseTo(6 * 365 * 0.05 + 18 * 365 * 0.1, 6);
    const winter = bill(steady(1000), { ...flat, bands: [band(17, 22, 0.3, 11, 3)] }, 0.25);
    expect(winter.total).toBeCloseTo(5 * 151 * 0.3 + (8760 - 5 * 151) * 0.1, 6);
    expect(winter.months.reduce((a, m) => a + m, 0)).toBeCloseTo(winter.total, 6);
  });
  it('gives an hour in two bands to the upper one, and a band from midnight to midnight the whole day', () => {
    const two = [band(16, 20, 0.4), band(0, 24, 0.2)];
    expect(bandAt(two, 17, 6)).toBe(0);
    expect(bandAt(two, 20, 6)).toBe(1);
    expect(bandAt([band(16, 20, 0.4, 6, 9)], 17, 10)).toBe(1);
  });
  it('charges each month for its highest quarter of an hour', () => {
    const net = steady(500);
    net[4 * 24 * 40 + 3] = 4000;
    const { demand, highest } = bill(net, { ...flat, demand: 10 }, 0.25);
    expect(highest[1]).toBe(4);
    expect(demand).toBeCloseTo(10 * (11 * 0.5 + 4), 9);
  });
  it('pays for what is fed in at its own price and never sets it off', () => {
    const net = steady(1000);
    for (let i = 0; i < net.length; i += 2) net[i] = -1000;
    const paid = bill(net, { ...flat, feedIn: 0.04 }, 0.25);
    expect(paid.energy).toBeCloseTo(438, 6);
    expect(paid.fedIn).toBeCloseTo(4380 * 0.04, 6);
    expect(paid.total).toBeCloseTo(438 - 175.2, 6);
  });
});
