import type { Range } from '@kneewall/project';
import type { HeatMet } from '../coupling/houseYear/heatMet.ts';
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
 * Whether the house needs less than the lowest continuous capacity, so that the unit stops and starts. Warmer than its
 * warmest row the unit gives at least that row; colder than its coldest row the house needs more, not less.
 */
export function stopsAt(unit: UnitModel, upstream: Upstream): (met: HeatMet) => boolean {
  const rows = rowsOf(unit, 'heating', 'least');
  const thin = altitudeFactor(required(upstream.climate.pressure), heatingCorrections(scenario()).altitudeShare);
  const [coldest, warmest] = [rows[0]?.outdoor ?? 0, rows.at(-1)?.outdoor ?? 0];
  const least = (t: number) =>
    readSheet(unit, 'heating', 'least', Math.max(coldest, Math.min(warmest, t))).capacity * thin;
  return (met) => met.load < least(met.outdoor);
}

/** Hours in which it stops and starts. */
export function cyclingHours(unit: UnitModel, upstream: Upstream): number {
  const stops = stopsAt(unit, upstream);
  return heatOfYear(upstream).met.reduce((a, m) => a + (stops(m) ? m.hours : 0), 0);
}

/**
 * Whether the house needs more than the unit gives, or the unit may not run at all. Colder than its coldest row it
 * gives no more than there: what exceeds that is certain, the rest of such hours is open.
 */
export function helpOf(
  unit: UnitModel,
  upstream: Upstream,
  outdoorLeast: number | undefined,
): (met: HeatMet) => 'certain' | 'open' | undefined {
  const rows = rowsOf(unit, 'heating', 'most');
  const pressure = required(upstream.climate.pressure);
  const corrections = heatingCorrections(scenario());
  const [coldest, warmest] = [rows[0]?.outdoor ?? 0, rows.at(-1)?.outdoor ?? 0];
  const given = (t: number): number =>
    heatingAt(unit, { outdoor: Math.max(coldest, Math.min(warmest, t)), pressure, speed: 'most' }, corrections)
      .capacity;
  return ({ outdoor, load }) => {
    if ((outdoorLeast !== undefined && outdoor < outdoorLeast) || load > given(outdoor)) return 'certain';
    return outdoor < coldest ? 'open' : undefined;
  };
}

/** Hours with help: those that are certain, up to those and the open ones together. */
export function helpedHours(unit: UnitModel, upstream: Upstream, outdoorLeast: number | undefined): Range {
  const help = helpOf(unit, upstream, outdoorLeast);
  let [certain, open] = [0, 0];
  for (const met of heatOfYear(upstream).met) {
    const helped = help(met);
    if (helped === 'certain') certain += met.hours;
    else if (helped === 'open') open += met.hours;
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
