import { asked, type Problem, refused } from '@kneewall/project';
import { saturationPressure } from '../../physics/air/index.ts';
import type { WeatherColumn } from './rows.ts';
import type { WeatherYear } from './weatherYear.ts';

const wrong = (column: WeatherColumn, unit: string, found: number): Problem =>
  refused('wrong-unit', [column], `This column looks like ${unit}. Say so in the columns, then import again.`, {
    found: Number(found.toPrecision(4)),
  });

/** A year in another unit than its format says: each column against what a year on this earth can be. */
export function wrongUnits(year: WeatherYear): Problem[] {
  return [temperature(year), humidity(year), pressure(year), sun(year)].filter((p) => p !== undefined);
}

/** Value below which a share of a column lies; numbers only. */
function percentile(x: Float64Array, share: number): number {
  const sorted = x.filter((v) => Number.isFinite(v)).sort();
  return sorted[Math.floor((sorted.length - 1) * share)] ?? Number.NaN;
}

function temperature(year: WeatherYear): Problem | undefined {
  const high = percentile(year.dryBulb, 0.9);
  if (high > 200) return wrong('dryBulb', 'kelvin', high);
  if (high > 45 || fitsFahrenheit(year)) return wrong('dryBulb', 'Fahrenheit', high);
  const dew = percentile(year.dewPoint, 0.9);
  return dew > 200 ? wrong('dewPoint', 'kelvin', dew) : undefined;
}

const celsius = (f: number): number => (f - 32) / 1.8;

/**
 * Where the year is cold, Fahrenheit can pass for Celsius. Dew point, temperature and humidity then disagree, and agree
 * once they are turned. A file that states no dew point of its own always agrees with itself.
 */
function fitsFahrenheit(year: WeatherYear): boolean {
  const miss = (dry: (t: number) => number, dew: (t: number) => number): number => {
    let [sum, count] = [0, 0];
    for (let i = 0; i < year.dryBulb.length; i += 11) {
      const [t, td, rh] = [year.dryBulb[i], year.dewPoint[i], year.relativeHumidity[i]];
      if (t === undefined || td === undefined || rh === undefined) continue;
      const off = Math.abs(saturationPressure(dew(td)) / saturationPressure(dry(t)) - rh);
      if (!Number.isFinite(off)) continue;
      sum += Math.min(1, off);
      count++;
    }
    return count === 0 ? 0 : sum / count;
  };
  const same = (t: number) => t;
  const asSaid = miss(same, same);
  return asSaid > 0.04 && Math.min(miss(celsius, celsius), miss(celsius, same)) < 0.5 * asSaid;
}

/** Humidity is a fraction here: a year that never passes 2 % was a fraction before. */
function humidity(year: WeatherYear): Problem | undefined {
  const high = percentile(year.relativeHumidity, 1);
  return high > 0 && high < 0.02 ? wrong('relativeHumidity', 'a fraction instead of per cent', high) : undefined;
}

/** What the air's weight would be called in other units, were it said to be in hectopascal or in pascal. */
const pressures: readonly (readonly [string, number, number])[] = [
  ['Pa', 4_500_000, 11_000_000],
  ['hPa', 450, 1100],
  ['kPa', 4500, 11_000],
  ['kPa', 45, 110],
  ['inches of mercury', 1300, 3250],
  ['inches of mercury', 13, 32.5],
];

function pressure(year: WeatherYear): Problem | undefined {
  const middle = percentile(year.pressure, 0.5);
  const found = pressures.find(([, low, high]) => middle >= low && middle <= high);
  return found ? wrong('pressure', found[0], middle) : undefined;
}

function sun(year: WeatherYear): Problem | undefined {
  const high = percentile(year.ghi, 1);
  if (high > 0 && high < 20) return wrong('ghi', 'kW/m²', high);
  if (high > 1600 && high < 6000) return wrong('ghi', 'kJ/m²', high);
  return high <= 0
    ? asked('impossible-value', ['ghi'], 'The file holds no sun at all. Get it with sun, or go on without.')
    : undefined;
}
