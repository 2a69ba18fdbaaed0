import type { ClimateResult } from '../climate/result.ts';
import type { LoadsResult } from '../loads/result.ts';
import { required } from '../plan/outcome.ts';
import { usualCorrections } from './corrections.ts';
import type { UnitModel } from './result.ts';
import { readSheet, rowsOf } from './sheet.ts';
import { altitudeFactor, heatingAt } from './unitAt.ts';

type Upstream = { readonly climate: ClimateResult; readonly loads: LoadsResult };

/** W the house needs at an outdoor temperature, straight from the balance temperature down. */
function loadAt({ loads }: Upstream): (outdoor: number) => number {
  const perDegree = required(loads.lossPerDegree).likely;
  const base = required(loads.balanceTemperature);
  return (outdoor) => Math.max(0, perDegree * (base - outdoor));
}

/** Hours of the year in which heat is needed. */
export function heatingHours(upstream: Upstream): number {
  const load = loadAt(upstream);
  return required(upstream.climate.bins).reduce((a, b) => a + (load(b.centre) > 0 ? b.hours : 0), 0);
}

/**
 * Hours in which the house needs less than the lowest continuous capacity, so that the unit stops and starts. Warmer
 * than its warmest row the unit gives at least that row; colder than its coldest row the house needs more, not less.
 */
export function cyclingHours(unit: UnitModel, upstream: Upstream): number {
  const rows = rowsOf(unit, 'heating', 'least');
  const load = loadAt(upstream);
  const thin = altitudeFactor(required(upstream.climate.pressure), usualCorrections(unit).altitudeShare);
  const [coldest, warmest] = [rows[0]?.outdoor ?? 0, rows.at(-1)?.outdoor ?? 0];
  const least = (t: number) =>
    readSheet(unit, 'heating', 'least', Math.max(coldest, Math.min(warmest, t))).capacity * thin;
  return required(upstream.climate.bins).reduce((a, b) => {
    const needed = load(b.centre);
    return a + (needed > 0 && needed < least(b.centre) ? b.hours : 0);
  }, 0);
}

/** The lowest outdoor temperature at which the unit alone holds the house, °C; the sheet's coldest row where it holds it there still. */
export function balancePoint(unit: UnitModel, upstream: Upstream): number {
  const rows = rowsOf(unit, 'heating', 'most');
  const load = loadAt(upstream);
  const pressure = required(upstream.climate.pressure);
  const spare = (outdoor: number) =>
    heatingAt(unit, { outdoor, pressure, speed: 'most' }, usualCorrections(unit)).capacity - load(outdoor);
  let [low, high] = [rows[0]?.outdoor ?? 0, rows.at(-1)?.outdoor ?? 0];
  if (spare(low) >= 0) return low;
  if (spare(high) < 0)
    return required<number>({ ok: false, because: 'out-of-range', paths: [`candidates.${unit.id}.rows`] });
  for (let i = 0; i < 50; i++) {
    const middle = (low + high) / 2;
    if (spare(middle) < 0) low = middle;
    else high = middle;
  }
  return high;
}
