import { capacityShare, coldLead, coldLithium } from '../../physics/power/index.ts';
import type { PowerYearInputs } from './powerYearJob.ts';
import type { PowerRun } from './runWay.ts';

/** How long a full battery carries the house without any sun or generator, by the day's mean outdoor air, °C. */
export type DarkDays = { readonly outdoor: number; readonly daily: number; readonly days: number };

const width = 5;
/** °C of a battery in a heated room. */
const indoors = 20;

/**
 * Days by outdoor air in bands of 5 K: what such days of this year take on average, kWh of alternating current, against
 * what a full battery of that day's temperature gives. Colder than the year's coldest day nothing is said.
 */
export function darkDays({ power, house }: PowerYearInputs, { record, weather, hours }: PowerRun): DarkDays[] {
  const perDay = Math.round(24 / hours);
  const bands = new Map<number, { days: number; daily: number }>();
  const mean = (x: Float64Array, day: number): number =>
    x.subarray(day * perDay, (day + 1) * perDay).reduce((a, b) => a + b, 0) / perDay;
  for (let day = 0; (day + 1) * perDay <= record.unit.length; day++) {
    const outdoor = mean(weather.steps.outdoor, day);
    if (outdoor > house.wanted.heating) continue;
    const watts = mean(record.unit, day) + mean(record.household, day) + mean(record.standing, day);
    const key = Math.round(outdoor / width);
    const band = bands.get(key) ?? { days: 0, daily: 0 };
    bands.set(key, { days: band.days + 1, daily: band.daily + (watts * 24) / 1000 });
  }
  return [...bands]
    .sort(([a], [b]) => a - b)
    .map(([key, band]) => {
      const daily = band.daily / band.days;
      return { outdoor: key * width, daily, days: daysOf(power, key * width, daily) };
    });
}

/** Days that a full battery gives so many kWh of alternating current a day. */
function daysOf({ battery, inverter }: PowerYearInputs['power'], outdoor: number, daily: number): number {
  const line = battery.chemistry === 'lead-acid' ? coldLead : coldLithium(battery.cold);
  const cell = battery.place === 'heated' ? indoors : outdoor;
  const usable = battery.energy * battery.usable * capacityShare(line, cell) * Math.sqrt(battery.roundTrip);
  return usable / (daily / inverter.nominal + (inverter.idle * 24) / 1000);
}
