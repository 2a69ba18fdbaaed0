import type { ResolvedProject } from '@kneewall/project';
import type { ClimateResult } from '../../climate/result.ts';
import { yearJob } from '../../climate/yearJob.ts';
import type { Job } from '../../jobs/job.ts';
import { attempt, type Outcome, required } from '../../plan/outcome.ts';
import { scenario } from '../../plan/scenario.ts';
import { daysJob } from './daysJob.ts';
import { dayWeather, nightWeather } from './designWeather.ts';
import { waveOf } from './ground.ts';
import { houseInputs } from './houseInputs.ts';
import { houseYearJob, type YearWeather } from './yearJob.ts';

type House = ResolvedProject['house'];
type Site = ResolvedProject['site'];

export type HouseJobs = { readonly days: Job; readonly year: Job };

/** Steps of a year, s; and of the made year the one of the same name. */
const yearStep = 900;
const seed = 1;

/** The jobs that run this house, as likely as it is known, through its design days and a year. */
export function houseJobs(house: House, site: Site, climate: ClimateResult): Outcome<HouseJobs> {
  return attempt(() => {
    const s = scenario();
    const months = required(climate.months);
    const pressure = required(climate.pressure);
    const inputs = houseInputs(house, site, pressure, waveOf(months.map((m) => m.mean)), s);
    const place = { latitude: required(climate.latitude), pressure };
    return {
      days: daysJob({
        house: inputs,
        night: nightWeather(required(climate.night), months, place, s),
        day: dayWeather(required(climate.day), place, s),
      }),
      year: houseYearJob({ house: inputs, weather: weatherOf(site, climate), step: yearStep }),
    };
  });
}

/** The imported file where there is one, else the months. */
export function weatherOf(site: Site, climate: ClimateResult): YearWeather {
  const { blob } = site.weather;
  if (blob !== undefined) return { kind: 'file', blob, read: yearJob(site)?.inputs };
  const { of, maybe } = scenario();
  const longitude = of(site.longitude);
  const place = {
    latitude: required(climate.latitude),
    longitude,
    elevation: required(climate.elevation),
    timeZone: maybe(site.timeZone) ?? Math.round(longitude / 15),
  };
  return { kind: 'months', months: required(climate.months), place, seed };
}

/** What a job will tell, until it has. */
export const pendingOn = (jobs: Outcome<HouseJobs>, which: keyof HouseJobs): Outcome<never> =>
  jobs.ok ? { ok: false, because: 'pending', paths: [jobs.value[which].key] } : jobs;
