import type { PriceBand, Tariff } from '../../../offgrid/result.ts';
import { daysInMonth, monthOfDay } from '../../../physics/calendar.ts';

/** A year's bill in money, and what it is made of. */
export type Bill = {
  readonly energy: number;
  readonly demand: number;
  readonly fedIn: number;
  readonly total: number;
  /** By band, the flat price last: kWh bought and money for them. */
  readonly bands: readonly { readonly id?: string; readonly energy: number; readonly money: number }[];
  /** Money by month, what is fed in taken off; and kW of each month's highest step. */
  readonly months: readonly number[];
  readonly highest: readonly number[];
};

const inBand = (b: PriceBand, hour: number, month: number): boolean => {
  const between = (x: number, from: number, to: number): boolean =>
    from < to ? x >= from && x < to : x >= from || x < to;
  const wholeDay = b.from === b.to || (b.from === 0 && b.to === 24);
  const inMonths =
    b.fromMonth <= b.toMonth ? month >= b.fromMonth && month <= b.toMonth : month >= b.fromMonth || month <= b.toMonth;
  return inMonths && (wholeDay || between(hour, b.from, b.to));
};

/** The band that holds an hour of a month (1 to 12), the first of several; as many as there are for none. */
export function bandAt(bands: readonly PriceBand[], hour: number, month: number): number {
  const at = bands.findIndex((b) => inBand(b, hour, month));
  return at < 0 ? bands.length : at;
}

/**
 * A year's bill for W taken from the grid (negative: fed in) in equal steps from 1 January, `hours` long. The demand
 * charge takes each month's highest step; what is fed in is paid, never set off. Bands may pass midnight and New Year.
 */
export function bill(net: Float64Array, { price, bands, demand, feedIn }: Tariff, hours: number): Bill {
  const prices = [...bands.map((b) => b.price), price];
  const energy = prices.map(() => 0);
  const highest = daysInMonth.map(() => 0);
  const months = daysInMonth.map(() => 0);
  let fed = 0;
  for (let i = 0; i < net.length; i++) {
    const at = i * hours;
    const month = monthOfDay(Math.floor(at / 24 + 1e-9));
    const watts = net[i] ?? 0;
    const kilowattHours = (watts * hours) / 1000;
    highest[month] = Math.max(highest[month] ?? 0, watts / 1000);
    if (watts < 0) {
      fed -= kilowattHours;
      months[month] = (months[month] ?? 0) + kilowattHours * feedIn;
      continue;
    }
    const band = bandAt(bands, (at + 1e-9) % 24, month + 1);
    energy[band] = (energy[band] ?? 0) + kilowattHours;
    months[month] = (months[month] ?? 0) + kilowattHours * (prices[band] ?? price);
  }
  const parts = energy.map((sum, i) => ({
    ...(bands[i] ? { id: bands[i].id } : {}),
    energy: sum,
    money: sum * (prices[i] ?? price),
  }));
  const forEnergy = parts.reduce((a, x) => a + x.money, 0);
  const forDemand = highest.reduce((a, kw) => a + kw * demand, 0);
  return {
    energy: forEnergy,
    demand: forDemand,
    fedIn: fed * feedIn,
    total: forEnergy + forDemand - fed * feedIn,
    bands: parts,
    months: months.map((m, i) => m + (highest[i] ?? 0) * demand),
    highest,
  };
}
