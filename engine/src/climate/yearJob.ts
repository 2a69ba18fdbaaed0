import type { ResolvedProject } from '@kneewall/project';
import { type Job, makeJob } from '../jobs/job.ts';
import { scenario } from '../plan/scenario.ts';
import { binsOfHours } from './bins.ts';
import type { ClimateMonth, Place, TemperatureBin, Ties, YearFacts } from './result.ts';
import type { WeatherYear } from './weather/weatherYear.ts';
import { tiesOfYear } from './winters/tiesOfYear.ts';
import { dailyRows, factsOfYear, monthsOfYear } from './yearFacts.ts';

/** What a plan needs of a year of weather: a few numbers instead of a hundred thousand. */
export type YearSummary = {
  readonly facts: YearFacts;
  readonly months: readonly ClimateMonth[];
  readonly bins: readonly TemperatureBin[];
  readonly ties: Ties;
  /** Where the file says it stands, for winters made after it. */
  readonly place: Place;
};

export const yearJobKind = 'climate/year';
export const yearJobVersion = 4;

/**
 * The job that reads a weather file through, so that the plan itself never has to hold it; undefined where no file is
 * named. How the file is to be read (kind, columns, place) belongs to the key: the same file read otherwise is
 * another year.
 */
export function yearJob(site: ResolvedProject['site']): Job | undefined {
  const { blob, format } = site.weather;
  if (blob === undefined) return undefined;
  const inputs = { blob, ...readAs(site, format) };
  return makeJob(yearJobKind, yearJobVersion, inputs, 'short');
}

type Format = ResolvedProject['site']['weather']['format'];

/** How a file is read: kind, columns of an hourly table, and the place of those that state none. */
function readAs(site: ResolvedProject['site'], format: Format | undefined) {
  const s = scenario();
  const place = [site.latitude, site.longitude, site.elevation, site.timeZone].map((x) => s.maybe(x) ?? null);
  return { format: format && 'choice' in format ? format.choice : null, columns: site.weather.columns, place };
}

/** How a recorded year is read, for keys. */
export const readingOf = (site: ResolvedProject['site'], id: string): unknown =>
  readAs(site, site.recorded[id]?.format);

/** Everything the plan takes from a year. `tell` hears how far it is. */
export function summariseYear(year: WeatherYear, tell: (done: number, total: number) => void = () => {}): YearSummary {
  const facts = factsOfYear(year);
  tell(1, 3);
  const months = monthsOfYear(year);
  tell(2, 3);
  const bins = binsOfHours(year.dryBulb, year.stepSeconds / 3600);
  tell(3, 3);
  const { latitude, longitude, elevation, timeZone } = year;
  const ties = tiesOfYear(dailyRows(year), months, latitude);
  return { facts, months, bins, ties, place: { latitude, longitude, elevation, timeZone } };
}
