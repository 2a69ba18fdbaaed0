import type { Range } from '@kneewall/project';
import { required } from '../plan/outcome.ts';
import { scenario } from '../plan/scenario.ts';
import { heatingCorrections } from './corrections.ts';
import { heatOfYear, type Upstream } from './ownSeason.ts';
import type { UnitModel } from './result.ts';
import { meetingPoint } from './season/plainBins.ts';
import { readSheet, rowsOf } from './sheet.ts';
import { altitudeFactor, heatingAt } from './unitAt.ts';

/** W the house needs at an outdoor temperature, straight from the balance temperature down. */
function loadAt({ loads }: Upstream): (outdoor: number) => number {
  const perDegree = required(loads.lossPerDegree).likely;
  const base = required(loads.balanceTemperature);
  return (outdoor) => Math.max(0, perDegree * (base - outdoor));
}

/** Hours of the year in which heat is needed. */
export const heatingHours = (upstream: Upstream): number => heatOfYear(upstream).met.reduce((a, m) => a + m.hours, 0);

/**
 * Hours in which the house needs less than the lowest continuous capacity, so that the unit stops and starts. Warmer
 * than its warmest row the unit gives at least that row; colder than its coldest row the house needs more, not less.
 */
export function cyclingHours(unit: UnitModel, upstream: Upstream): number {
  const rows = rowsOf(unit, 'heating', 'least');
  const thin = altitudeFactor(required(upstream.climate.pressure), heatingCorrections(scenario()).altitudeShare);
  const [coldest, warmest] = [rows[0]?.outdoor ?? 0, rows.at(-1)?.outdoor ?? 0];
  const least = (t: number) =>
    readSheet(unit, 'heating', 'least', Math.max(coldest, Math.min(warmest, t))).capacity * thin;
  return heatOfYear(upstream).met.reduce((a, m) => a + (m.load < least(m.outdoor) ? m.hours : 0), 0);
}

/**
 * Hours in which the house needs more than the unit gives, or the unit may not run at all. Colder than its coldest row
 * it gives no more than there: what exceeds that is counted for certain, the other such hours make the range.
 */
export function helpedHours(unit: UnitModel, upstream: Upstream, outdoorLeast: number | undefined): Range {
  const rows = rowsOf(unit, 'heating', 'most');
  const pressure = required(upstream.climate.pressure);
  const corrections = heatingCorrections(scenario());
  const [coldest, warmest] = [rows[0]?.outdoor ?? 0, rows.at(-1)?.outdoor ?? 0];
  const given = (t: number): number =>
    heatingAt(unit, { outdoor: Math.max(coldest, Math.min(warmest, t)), pressure, speed: 'most' }, corrections)
      .capacity;
  let [certain, open] = [0, 0];
  for (const { outdoor, load, hours } of heatOfYear(upstream).met) {
    if ((outdoorLeast !== undefined && outdoor < outdoorLeast) || load > given(outdoor)) certain += hours;
    else if (outdoor < coldest) open += hours;
  }
  return { low: certain, likely: certain, high: certain + open };
}

/** The lowest outdoor temperature at which the unit alone holds the house, °C; the sheet's coldest row where it holds it there still. */
export function balancePoint(unit: UnitModel, upstream: Upstream): number {
  const rows = rowsOf(unit, 'heating', 'most');
  const load = loadAt(upstream);
  const pressure = required(upstream.climate.pressure);
  const corrections = heatingCorrections(scenario());
  const spare = (outdoor: number) =>
    heatingAt(unit, { outdoor, pressure, speed: 'most' }, corrections).capacity - load(outdoor);
  const [low, high] = [rows[0]?.outdoor ?? 0, rows.at(-1)?.outdoor ?? 0];
  if (spare(low) >= 0) return low;
  if (spare(high) < 0)
    return required<number>({ ok: false, because: 'out-of-range', paths: [`candidates.${unit.id}.rows`] });
  return meetingPoint(spare, low, high);
}
