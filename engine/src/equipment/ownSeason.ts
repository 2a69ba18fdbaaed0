import type { Given } from '@kneewall/project';
import type { ClimateResult } from '../climate/result.ts';
import type { HeatMet } from '../coupling/houseYear/heatMet.ts';
import type { LoadsResult } from '../loads/result.ts';
import { attempt, required, unresolved } from '../plan/outcome.ts';
import { type Scenario, scenario, spread } from '../plan/scenario.ts';
import { type HeatingCorrections, heatingCorrections } from './corrections.ts';
import type { Character, OwnSeason, UnitModel, UnitRow, UnitSpeed } from './result.ts';
import { heatingSeason, type Season, type SeasonRow } from './season/season.ts';
import { meetLoad, type Test } from './season/usUnits.ts';
import { readRows, rowsOf } from './sheet.ts';
import { heatingOf } from './unitAt.ts';

export type Upstream = { readonly climate: ClimateResult; readonly loads: LoadsResult };

/** What stopping and starting costs, as a share of efficiency at no load. Source: `equipment.own-season`. */
const cyclicGiven: Given = {
  path: 'candidates#cyclic',
  kind: 'fraction',
  known: 'assumed',
  low: 0.1,
  likely: 0.25,
  high: 0.35,
};

/**
 * The heat the project's year asks for: hour by hour where the house's year has been run, else the hours by
 * temperature with a straight line of load.
 */
export function heatOfYear({ climate, loads }: Upstream): { met: readonly HeatMet[]; basis: OwnSeason['basis'] } {
  if (loads.year.ok) return { met: loads.year.value.heating.met, basis: 'hours' };
  const perDegree = required(loads.lossPerDegree).likely;
  const base = required(loads.balanceTemperature);
  const met = required(climate.bins).flatMap(({ centre, hours }): HeatMet[] => {
    const load = perDegree * (base - centre);
    return load > 0 ? [{ outdoor: centre, load, hours }] : [];
  });
  return { met, basis: 'bins' };
}

const speedNames: readonly UnitSpeed[] = ['least', 'between', 'rated', 'most'];

/** Heating rows by speed, rising in outdoor temperature; speeds without rows are left out. */
type Speeds = readonly { readonly speed: UnitSpeed; readonly rows: readonly UnitRow[] }[];

function speedsOf(unit: UnitModel): Speeds {
  const speeds = speedNames.flatMap((speed) => {
    const rows = attempt(() => rowsOf(unit, 'heating', speed));
    return rows.ok ? [{ speed, rows: rows.value }] : [];
  });
  return speeds.length > 0 ? speeds : unresolved('missing', `candidates.${unit.id}.rows`);
}

const coldest = (rows: readonly UnitRow[]): number => rows[0]?.outdoor ?? 0;
const warmest = (rows: readonly UnitRow[]): number => rows.at(-1)?.outdoor ?? 0;
/** °C of the coldest row of any speed. */
const coldestOf = (speeds: Speeds): number => Math.min(...speeds.map((s) => coldest(s.rows)));

type Frame = {
  readonly unit: UnitModel;
  readonly speeds: Speeds;
  readonly pressure: number;
  readonly outdoorLeast: number | undefined;
  /** Colder than its coldest row: as at that row, or not at all. */
  readonly beyond: 'held' | 'stopped';
};

/**
 * What it can give at an outdoor temperature, by rising capacity; none where it stands still. Warmer than its warmest
 * row its lowest and highest speed count as at that row; a speed between them is heard only within its own rows.
 */
function choices(frame: Frame, outdoor: number, corrections: HeatingCorrections): readonly Test[] {
  const { speeds, unit, pressure } = frame;
  if (frame.outdoorLeast !== undefined && outdoor < frame.outdoorLeast) return [];
  const beyond = outdoor < coldestOf(speeds);
  if (beyond && frame.beyond === 'stopped') return [];
  const at = beyond ? coldestOf(speeds) : outdoor;
  const heard = (rows: readonly UnitRow[], i: number): boolean =>
    at >= coldest(rows) && (i === 0 || i === speeds.length - 1 || at <= warmest(rows));
  return speeds
    .filter(({ rows }, i) => heard(rows, i))
    .map(({ rows }) =>
      heatingOf(readRows(rows, unit, Math.min(at, warmest(rows))), { outdoor: at, pressure }, corrections),
    )
    .sort((a, b) => a.capacity - b.capacity);
}

function seasonOf(frame: Frame, met: readonly HeatMet[], corrections: HeatingCorrections, cyclic: number): Season {
  return heatingSeason(
    met.map(({ outdoor, load, hours }): SeasonRow => {
      const [low, ...others] = choices(frame, outdoor, corrections);
      const none = { outdoor, weight: hours, load, delivered: 0, capacity: 0, running: 0, factor: 1, input: 0 };
      if (!low) return { ...none, backup: load };
      const { most, ...run } = meetLoad([low, ...others], load, cyclic);
      return { outdoor, weight: hours, load, capacity: most.capacity, ...run, backup: load - run.delivered };
    }),
  );
}

/**
 * Heat for electricity over the project's own year, with altitude, frost, stopping and starting, and resistance heat
 * for what is lacking. Hours colder than the coldest row count as at that row; that the unit then stands still is the
 * low end. Standby and the blower's ducts are not in it, as they are not in a rating. Source: `equipment.own-season`.
 */
export function ownSeason(unit: UnitModel, upstream: Upstream, outdoorLeast: number | undefined): OwnSeason {
  const { met, basis } = heatOfYear(upstream);
  const speeds = speedsOf(unit);
  const frame: Frame = { unit, speeds, pressure: required(upstream.climate.pressure), outdoorLeast, beyond: 'held' };
  const run = (s: Scenario, beyond: Frame['beyond']): Season =>
    seasonOf({ ...frame, beyond }, met, heatingCorrections(s), s.of(cyclicGiven));
  if (met.length === 0) return unresolved('out-of-range', 'site.coldNight');
  const { ratio } = spread((s) => ({ ratio: run(s, 'held').ratio }));
  const likely = run(scenario(), 'held');
  const stopped = run(scenario(), 'stopped').ratio;
  return {
    ratio: { ...ratio, low: Math.min(ratio.low, stopped) },
    character: characterOf(likely),
    basis,
    hoursBeyond: met.reduce((a, m) => a + (m.outdoor < coldestOf(speeds) ? m.hours : 0), 0),
  };
}

/** What a season's figure comes of. A season without load has none of it. */
export function characterOf({ rows, heat }: Season): Character {
  const mean = (of: (r: SeasonRow) => number): number =>
    heat > 0 ? rows.reduce((a, r) => a + r.weight * of(r), 0) / heat : 0;
  return {
    outdoor: mean((r) => r.load * r.outdoor),
    cycling: mean((r) => (r.running < 1 ? r.delivered : 0)),
    backup: mean((r) => r.backup),
  };
}
