import type { Given, ResolvedProject } from '@kneewall/project';
import { humidityRatio, standardPressure } from '../physics/air/index.ts';
import { attempt, type Outcome, required, unresolved } from '../plan/outcome.ts';
import { type Scenario, scenario } from '../plan/scenario.ts';
import type { TradeInput } from '../plan/trade.ts';
import { recordWorking } from '../plan/working.ts';
import { binsOfHours, binsOfMonths } from './bins.ts';
import { hotDay } from './day.ts';
import { guessed, monthsOf } from './months.ts';
import type { ClimateBasis, ClimateMonth, ClimateResult, DesignDay, DesignNight, YearFacts } from './result.ts';
import { isWeatherYear, type WeatherYear } from './weather/weatherYear.ts';
import { factsOfYear, monthsOfYear } from './yearFacts.ts';

type Site = ResolvedProject['site'];
type Year = { readonly year: WeatherYear; readonly facts: YearFacts };

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
  const months = file === undefined ? monthsOf(site, s) : attempt(() => monthsOfYear(required(file).year));
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
    bins: attempt(() =>
      file === undefined
        ? binsOfMonths(required(months))
        : binsOfHours(required(file).year.dryBulb, required(file).year.stepSeconds / 3600),
    ),
    facts: attempt(() => (file === undefined ? unresolved('missing', 'site.weather.blob') : required(file).facts)),
    workings: { 'climate/pressure': steps },
    wanted: [],
  };
}

const basisOf = (site: Site): ClimateBasis =>
  site.weather.blob !== undefined ? 'weather-file' : Object.keys(site.normals).length > 0 ? 'normals' : 'assumed';

/** The imported year; `pending` until the host has read the file. Undefined where none is named. */
function weatherOf(site: Site, results: Readonly<Record<string, unknown>>): Outcome<Year> | undefined {
  const { blob } = site.weather;
  if (blob === undefined) return undefined;
  return attempt(() => {
    const year = results[`blob:${blob}`];
    return isWeatherYear(year) ? { year, facts: factsOfYear(year) } : unresolved('pending', `blob:${blob}`);
  });
}

/** What the authority prescribes, else the answer given, else the 99 % hour of the file. */
function nightTemperature(site: Site, file: Outcome<Year> | undefined): Given {
  if (!('missing' in site.designHeating)) return site.designHeating;
  if (!('missing' in site.coldNight)) return site.coldNight;
  if (file === undefined) return unresolved('missing', 'site.coldNight');
  const { facts } = required(file);
  return guessed('site.weather', 'temperature', facts.heating99, facts.heating996, facts.heating99 + 1);
}

function dayTemperature(site: Site, file: Outcome<Year> | undefined): Given {
  if (!('missing' in site.hotAfternoon)) return site.hotAfternoon;
  if (file === undefined) return unresolved('missing', 'site.hotAfternoon');
  const { facts } = required(file);
  return guessed('site.weather', 'temperature', facts.cooling01, facts.cooling01 - 1, facts.cooling004);
}

function nightOf(
  site: Site,
  s: Scenario,
  months: Outcome<readonly ClimateMonth[]>,
  pressure: Outcome<number>,
  file: Outcome<Year> | undefined,
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
  file: Outcome<Year> | undefined,
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
    hours: hotDay({ highest, range: dailyRange.likely, latitude, elevation, pressure, month: hottest.month }),
  };
}

function extreme(months: readonly ClimateMonth[], rank: (m: ClimateMonth) => number): ClimateMonth {
  const [first, ...rest] = months;
  if (!first) throw new Error('assert: a climate has twelve months');
  return rest.reduce((best, m) => (rank(m) > rank(best) ? m : best), first);
}
