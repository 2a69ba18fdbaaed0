import type { ResolvedProject } from '@kneewall/project';
import type { ClimateResult } from '../../climate/result.ts';
import type { Job } from '../../jobs/job.ts';
import { attempt, type Outcome, required } from '../../plan/outcome.ts';
import { daysJob } from './daysJob.ts';
import { waveOf } from './ground.ts';
import { houseCase } from './houseCase.ts';
import { studyJob, studySamples, studySeed } from './studyJob.ts';
import { houseYearJob, yearStep } from './yearJob.ts';

export type HouseJobs = { readonly days: Job; readonly year: Job; readonly study: Job };

/** The jobs that run this house, as likely as it is known, through its design days and a year. */
export function houseJobs(
  { house, site }: Pick<ResolvedProject, 'house' | 'site'>,
  climate: ClimateResult,
): Outcome<HouseJobs> {
  return attempt(() => {
    const { weather, ...inputs } = houseCase({ house, site }, climate);
    const months = required(climate.months);
    return {
      days: daysJob(inputs),
      year: houseYearJob({ house: inputs.house, weather, step: yearStep }),
      study: studyJob({
        house,
        site,
        night: required(climate.night),
        day: required(climate.day),
        months,
        wave: waveOf(months.map((m) => m.mean)),
        latitude: required(climate.latitude),
        pressure: required(climate.pressure),
        samples: studySamples,
        seed: studySeed,
      }),
    };
  });
}

/** What a job will tell, until it has. */
export const pendingOn = (jobs: Outcome<HouseJobs>, which: keyof HouseJobs): Outcome<never> =>
  jobs.ok ? { ok: false, because: 'pending', paths: [jobs.value[which].key] } : jobs;
