import type { ResolvedProject } from '@kneewall/project';
import type { ClimateResult } from '../../climate/result.ts';
import type { Job } from '../../jobs/job.ts';
import { attempt, type Outcome, required } from '../../plan/outcome.ts';
import { scenario } from '../../plan/scenario.ts';
import { daysJob } from './daysJob.ts';
import { dayWeather, nightWeather } from './designWeather.ts';
import { waveOf } from './ground.ts';
import { houseInputs } from './houseInputs.ts';
import { improvementsJob } from './improvementsJob.ts';
import { studyJob, studySamples, studySeed } from './studyJob.ts';
import { houseYearJob } from './yearJob.ts';

type House = ResolvedProject['house'];
type Site = ResolvedProject['site'];

export type HouseJobs = { readonly days: Job; readonly year: Job; readonly study: Job; readonly improvements: Job };

/** Steps of a year, s. */
const yearStep = 900;

/** The jobs that run this house, as likely as it is known, through its design days and a year. */
export function houseJobs(house: House, site: Site, climate: ClimateResult): Outcome<HouseJobs> {
  return attempt(() => {
    const s = scenario();
    const months = required(climate.months);
    const pressure = required(climate.pressure);
    const wave = waveOf(months.map((m) => m.mean));
    const inputs = houseInputs(house, site, pressure, wave, s);
    const place = { latitude: required(climate.latitude), pressure };
    const night = required(climate.night);
    const day = required(climate.day);
    const cold = nightWeather(night, months, place, s);
    const hot = dayWeather(day, place, s);
    const weather = required(climate.year);
    return {
      days: daysJob({ house: inputs, night: cold, day: hot }),
      year: houseYearJob({ house: inputs, weather, step: yearStep }),
      improvements: improvementsJob({ house: inputs, night: cold, day: hot, weather }),
      study: studyJob({ house, site, night, day, months, wave, ...place, samples: studySamples, seed: studySeed }),
    };
  });
}

/** What a job will tell, until it has. */
export const pendingOn = (jobs: Outcome<HouseJobs>, which: keyof HouseJobs): Outcome<never> =>
  jobs.ok ? { ok: false, because: 'pending', paths: [jobs.value[which].key] } : jobs;
