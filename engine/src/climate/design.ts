import type { Given, ResolvedProject } from '@kneewall/project';
import type { Job, Results } from '../jobs/job.ts';
import { humidityRatio, standardPressure } from '../physics/air/index.ts';
import { attempt, type Outcome, required, unresolved } from '../plan/outcome.ts';
import { type Scenario, scenario } from '../plan/scenario.ts';
import type { TradeInput } from '../plan/trade.ts';
import { recordWorking } from '../plan/working.ts';
import { binsOfMonths } from './bins.ts';
import { hotDay, sunAboveAir } from './day.ts';
import { guessed, monthsOf } from './months.ts';
import type {
  ClimateBasis,
  ClimateMonth,
  ClimateResult,
  DesignDay,
  DesignNight,
  Place,
  RecordedWinters,
  WintersWeather,
  YearWeather,
} from './result.ts';
import { isWeatherYear } from './weather/weatherYear.ts';
import { winterOf } from './winters/winterOf.ts';
import { readingOf, summariseYear, type YearSummary, yearJob } from './yearJob.ts';

type Site = ResolvedProject['site'];

/** Design conditions, months and temperature bins of the place. Pure; what is missing makes only its own part unknown. */
export function design({ project: { site }, results }: TradeInput): ClimateResult {
  const s = scenario();
  const file = weatherOf(site, results);
  const latitude = attempt(() => s.of(site.latitude));
  const elevation = attempt(() => s.of(site.elevation));
  const { recorder, steps } = recordWorking();
  const pressure = attempt(() => {
    const z = s.of(site.elevation);
    if (!('missing' in site.elevation)) recorder.given('z', site.elevation);
    const p = standardPressure(z);
    recorder.step('p', '101325 * (1 - 2.25577e-5 * z) ^ 5.2559', { z }, p, 'Pa', 'moist-air.atmosphere');
    return p;
  });
  const months = file === undefined ? monthsOf(site, s) : attempt(() => required(file).months);
  return {
    basis: basisOf(site),
    latitude,
    elevation,
    pressure,
    night: attempt(() => nightOf(site, s, months, pressure, file)),
    day: attempt(() =>
      dayOf(site, s, required(months), required(latitude), required(elevation), required(pressure), file),
    ),
    months,
    bins: attempt(() => (file === undefined ? binsOfMonths(required(months)) : required(file).bins)),
    facts: attempt(() => (file === undefined ? unresolved('missing', 'site.weather.blob') : required(file).facts)),
    year: attempt(() => yearOf(site, required(months), s)),
    winters: attempt(() => wintersOf(site, required(months), file, s)),
    recorded: attempt(() => recordedOf(site, required(months))),
    workings: { 'climate/pressure': steps },
    wanted: wantedOf(site, file),
  };
}

/** Which of the years that could be made from the months is made. */
const seed = 1;

/** The imported file where there is one, else the months. */
function yearOf(site: Site, months: readonly ClimateMonth[], s: Scenario): YearWeather {
  const { blob } = site.weather;
  if (blob !== undefined) return { kind: 'file', blob, read: yearJob(site)?.inputs };
  return { kind: 'months', months, place: placeOf(site, s), seed };
}

function placeOf(site: Site, s: Scenario): Place {
  const longitude = s.of(site.longitude);
  return {
    latitude: s.of(site.latitude),
    longitude,
    elevation: s.of(site.elevation),
    timeZone: s.maybe(site.timeZone) ?? Math.round(longitude / 15),
  };
}

/** Many winters are made in any case: one imported year says how days hang together and no more. */
function wintersOf(
  site: Site,
  months: readonly ClimateMonth[],
  file: Outcome<YearSummary> | undefined,
  s: Scenario,
): WintersWeather {
  if (file === undefined) return { months, place: placeOf(site, s), seed };
  const { ties, place } = required(file);
  return { months, place, ties, seed };
}

/** The years that were measured, by name. An entry without a file is passed by. */
function recordedOf(site: Site, months: readonly ClimateMonth[]): RecordedWinters {
  const files = Object.entries(site.recorded).flatMap(([id, { blob, name }]) =>
    blob === undefined
      ? []
      : [{ id, name: name ?? id, weather: { kind: 'file', blob, read: readingOf(site, id) } } as const],
  );
  if (files.length === 0) return unresolved('missing', 'site.recorded');
  files.sort((a, b) => (a.name < b.name ? -1 : a.name > b.name ? 1 : 0) || (a.id < b.id ? -1 : 1));
  return { months: winterOf(months), files };
}

const basisOf = (site: Site): ClimateBasis =>
  site.weather.blob !== undefined ? 'weather-file' : Object.keys(site.normals).length > 0 ? 'normals' : 'assumed';

/**
 * What the plan takes from the imported year: from its job, or from the file itself where the host hands it in.
 * `pending` until then. Undefined where no file is named.
 */
function weatherOf(site: Site, results: Results): Outcome<YearSummary> | undefined {
  const job = yearJob(site);
  if (job === undefined) return undefined;
  const year = results[`blob:${site.weather.blob}`];
  return attempt(
    () =>
      (results[job.key] as YearSummary | undefined) ??
      (isWeatherYear(year) ? summariseYear(year) : unresolved('pending', job.key)),
  );
}

/** The year's job is wanted for as long as neither its result nor the file is there. */
function wantedOf(site: Site, file: Outcome<YearSummary> | undefined): readonly Job[] {
  const job = yearJob(site);
  return job !== undefined && file?.ok === false ? [job] : [];
}

/** What the authority prescribes, else the answer given, else the 99 % hour of the file. */
function nightTemperature(site: Site, file: Outcome<YearSummary> | undefined): Given {
  if (!('missing' in site.designHeating)) return site.designHeating;
  if (!('missing' in site.coldNight)) return site.coldNight;
  if (file === undefined) return unresolved('missing', 'site.coldNight');
  const { facts } = required(file);
  return guessed('site.weather', 'temperature', facts.heating99, facts.heating996, facts.heating99 + 1, 'estimated');
}

function dayTemperature(site: Site, file: Outcome<YearSummary> | undefined): Given {
  if (!('missing' in site.hotAfternoon)) return site.hotAfternoon;
  if (file === undefined) return unresolved('missing', 'site.hotAfternoon');
  const { facts } = required(file);
  return guessed('site.weather', 'temperature', facts.cooling01, facts.cooling01 - 1, facts.cooling004, 'estimated');
}

function nightOf(
  site: Site,
  s: Scenario,
  months: Outcome<readonly ClimateMonth[]>,
  pressure: Outcome<number>,
  file: Outcome<YearSummary> | undefined,
): DesignNight {
  const outdoor = nightTemperature(site, file);
  const coldest = months.ok ? extreme(months.value, (m) => -m.mean) : undefined;
  const wind = coldest?.wind ?? 4;
  return {
    outdoor,
    // Cold clear nights are calmer than their month, gales are not: half to one and a half of the mean.
    wind: guessed('site.shelter', 'velocity', wind, wind * 0.5, wind * 1.5),
    humidityRatio: humidityRatio({ t: s.of(outdoor), rh: 0.8 }, pressure.ok ? pressure.value : 101_325),
  };
}

function dayOf(
  site: Site,
  s: Scenario,
  months: readonly ClimateMonth[],
  latitude: number,
  elevation: number,
  pressure: number,
  file: Outcome<YearSummary> | undefined,
): DesignDay {
  const outdoor = dayTemperature(site, file);
  const hottest = extreme(months, (m) => m.mean);
  const range = hottest.dailyRange;
  // Hot clear days swing wider than their month's mean.
  const dailyRange = guessed('site.coast', 'temperature-difference', range * 1.2, range, range * 1.5);
  const highest = s.of(outdoor);
  return {
    outdoor,
    dailyRange,
    wind: guessed('site.shelter', 'velocity', hottest.wind * 0.8, hottest.wind * 0.4, hottest.wind * 1.2),
    humidityRatio: humidityRatio(
      { t: highest - dailyRange.likely / 2, rh: Math.min(0.95, hottest.relativeHumidity) },
      pressure,
    ),
    month: hottest.month,
    aboveAir: sunAboveAir(hottest.month),
    hours: hotDay({ highest, range: dailyRange.likely, latitude, elevation, pressure, month: hottest.month }),
  };
}

function extreme(months: readonly ClimateMonth[], rank: (m: ClimateMonth) => number): ClimateMonth {
  const [first, ...rest] = months;
  if (!first) throw new Error('assert: a climate has twelve months');
  return rest.reduce((best, m) => (rank(m) > rank(best) ? m : best), first);
}
