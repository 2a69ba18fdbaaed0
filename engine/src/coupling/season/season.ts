import type { ResolvedProject } from '@kneewall/project';
import type { AirModel } from '../../air/ductwork.ts';
import type { AirResult } from '../../air/result.ts';
import type { Job, PlainParts, Results } from '../../jobs/job.ts';
import type { HouseCase } from '../../loads/dynamic/houseCase.ts';
import { yearStep } from '../../loads/dynamic/yearJob.ts';
import { attempt, type Outcome, required, unresolved } from '../../plan/outcome.ts';
import { scenario } from '../../plan/scenario.ts';
import type { TradeResults } from '../../results.ts';
import type { Foresight } from '../foresight/foresightAnswers.ts';
import { foresightJob } from '../foresight/foresightJob.ts';
import type { Improvements } from '../houseYear/improvements.ts';
import { improvementsJob } from '../houseYear/improvementsJob.ts';
import type { LifeCosts } from '../lifeCost/lifeCosts.ts';
import { effectInputs } from '../logEffect/effectInputs.ts';
import { type LogEffect, logEffectJob } from '../logEffect/logEffectJob.ts';
import type { GridYear } from '../power/grid/gridYear.ts';
import { gridYearJob } from '../power/grid/gridYearJob.ts';
import type { PowerHelps } from '../power/helps/helpsAnswers.ts';
import { powerHelpsJob } from '../power/helps/helpsJob.ts';
import { otherUnits } from '../power/helps/otherUnits.ts';
import type { PowerYear } from '../power/powerAnswers.ts';
import { type PowerYearInputs, powerYearJob } from '../power/powerYearJob.ts';
import type { Ways } from '../ways/compareWays.ts';
import { waysJob } from '../ways/waysJob.ts';
import { recordedJob } from '../winters/recordedJob.ts';
import type { Recorded } from '../winters/recordedRows.ts';
import type { Winters } from '../winters/wintersAnswers.ts';
import { wintersCount, wintersJob, wintersStep } from '../winters/wintersJob.ts';
import { standingDraw } from './standingDraw.ts';
import type { UnitYear } from './unitAnswers.ts';
import { ductsInputs, unitInputs } from './unitInputs.ts';
import { type UnitYearInputs, unitYearJob } from './unitYearJob.ts';

/** What needs house, unit and ducts together through a year; pending until its jobs are done. */
export type Season = {
  readonly unitYear: Outcome<UnitYear>;
  readonly improvements: Outcome<Improvements>;
  /** The ducts as they are drawn, sealed, wrapped, buried, made anew or kept inside. */
  readonly ways: Outcome<Ways>;
  /** The year with the chosen unit on one's own power; nothing of it on the grid. */
  readonly power: Outcome<PowerYear>;
  /** The same through many winters. */
  readonly winters: Outcome<Winters>;
  /** And through winters that were measured, where their files are given. */
  readonly recorded: Outcome<Recorded>;
  /** What other control could save there; asked for by whoever wants to know. */
  readonly foresight: Outcome<Foresight>;
  /** What changes to house, unit and power would do to that year. */
  readonly powerHelps: Outcome<PowerHelps>;
  /** On the grid: what the year costs, and an outage. */
  readonly gridYear: Outcome<GridYear>;
  /** What a log's values would change in the plan, or have changed; nothing without a log. */
  readonly logEffect: Outcome<LogEffect>;
  /** What each candidate costs over its life, from the years above. */
  readonly lifeCost: Outcome<LifeCosts>;
};

/** What jobs find of it. */
export type SeasonFound = Omit<Season, 'lifeCost'>;
export type SeasonJobs = { readonly [K in keyof SeasonFound]: Outcome<Job> };

const unknown: Outcome<never> = { ok: false, because: 'fault', paths: [] };
export const noSeasonJobs: SeasonJobs = {
  unitYear: unknown,
  improvements: unknown,
  ways: unknown,
  power: unknown,
  winters: unknown,
  recorded: unknown,
  foresight: unknown,
  powerHelps: unknown,
  gridYear: unknown,
  logEffect: unknown,
};

/** What nobody may look at, or nobody could work out. */
export const noSeason: Season = {
  ...(noSeasonJobs as { readonly [K in keyof SeasonFound]: typeof unknown }),
  lifeCost: unknown,
};

/** What of the air trade these jobs are made of. */
export type DuctsFound = Pick<AirResult, 'model' | 'flows' | 'sizing'>;

/** The jobs that run house, chosen unit and ducts together. Without unit or ducts the house can still be improved. */
export function seasonJobs(
  project: ResolvedProject,
  trades: Partial<Omit<TradeResults, 'air'>> & { readonly air?: DuctsFound | undefined },
  house: Outcome<HouseCase>,
  kept?: PlainParts,
): SeasonJobs {
  const { climate, equipment, air, offgrid } = trades;
  const chosen = attempt(() => {
    const { candidates, chosen: id } = known(equipment);
    return candidates[required(id)] ?? unresolved('missing', 'candidates');
  });
  const ducts = attempt(() => ductsInputs(known(air), required(chosen)));
  const unit = attempt((): UnitYearInputs => {
    const { weather, house: inputs } = required(house);
    const { unit: model } = required(chosen);
    const own = unitInputs(model, project.candidates[model.id], inputs, required(ducts).flows.flow, scenario());
    return { house: inputs, weather, step: yearStep, unit: own, ducts: required(ducts) };
  });
  const own = attempt(() => ({
    power: required(known(offgrid).inputs),
    standing: standingDraw(project, required(chosen).id),
  }));
  const powered = attempt((): PowerYearInputs => ({ ...required(unit), ...required(own) }));
  return {
    logEffect: attempt(() => logEffectJob(effectInputs(project, trades, required(unit), own), kept)),
    unitYear: attempt(() => unitYearJob(required(unit), kept)),
    improvements: attempt(() =>
      improvementsJob({ ...required(house), ...(ducts.ok ? { ducts: ducts.value } : {}) }, kept),
    ),
    ways: attempt(() => {
      const best = bestModel(known(air));
      return waysJob(
        { ...required(unit), ...(best ? { best } : {}), ...ownPower(project, offgrid, required(chosen).id) },
        kept,
      );
    }),
    winters: attempt(() => {
      const { weather: _one, ...rest } = required(unit);
      const winters = required(known(climate).winters);
      return wintersJob({ ...rest, ...required(own), winters, step: wintersStep, count: wintersCount }, kept);
    }),
    recorded: attempt(() => {
      const { weather: _one, ...rest } = required(unit);
      const recorded = required(known(climate).recorded);
      return recordedJob({ ...rest, ...required(own), recorded, step: wintersStep }, kept);
    }),
    power: attempt(() => powerYearJob(required(powered), kept)),
    foresight: attempt(() => foresightJob(required(powered), kept)),
    powerHelps: attempt(() => {
      const set = required(powered);
      const others = otherUnits(project, required(chosen), known(equipment).candidates, set, known(air));
      return powerHelpsJob({ ...set, others, costs: required(known(offgrid).costs) }, kept);
    }),
    gridYear: attempt(() => {
      const grid = required(known(offgrid).grid ?? unresolved('missing', 'power.tariff.price'));
      return gridYearJob({ ...required(unit), ...grid, standing: standingDraw(project, required(chosen).id) }, kept);
    }),
  };
}

/** One's own power, for the ways that are compared by it; nothing on the grid, or while it is not known. */
function ownPower(project: ResolvedProject, offgrid: TradeResults['offgrid'] | undefined, id: string) {
  const power = offgrid?.inputs;
  return power?.ok ? { power: power.value, standing: standingDraw(project, id) } : {};
}

/** The ducts in their best stocked sizes, where some change and all fit. Ends the enclosing attempt while sizes are looked for. */
function bestModel({ sizing }: DuctsFound): AirModel | undefined {
  if (!sizing.ok && sizing.because === 'pending') return required(sizing);
  return sizing.ok && sizing.value.changed.length > 0 ? sizing.value.sized : undefined;
}

/** A trade's result, or the fault that left none. */
const known = <T>(result: T | undefined): T => result ?? required<T>({ ok: false, because: 'fault', paths: [] });

/** What the finished ones found, and those still wanted. */
export function seasonFrom(
  jobs: SeasonJobs,
  results: Results,
): { readonly season: SeasonFound; readonly wanted: Job[] } {
  const told = <T>(job: Outcome<Job>): Outcome<T> => {
    if (!job.ok) return job;
    const { key } = job.value;
    return key in results ? { ok: true, value: results[key] as T } : { ok: false, because: 'pending', paths: [key] };
  };
  const foresight = told<Outcome<Foresight>>(jobs.foresight);
  const all = Object.values(jobs).flatMap((job) => (job.ok ? [job.value] : []));
  return {
    season: {
      unitYear: told<UnitYear>(jobs.unitYear),
      improvements: told<Improvements>(jobs.improvements),
      ways: told<Ways>(jobs.ways),
      power: told<PowerYear>(jobs.power),
      winters: told<Winters>(jobs.winters),
      recorded: told<Recorded>(jobs.recorded),
      foresight: foresight.ok ? foresight.value : foresight,
      powerHelps: told<PowerHelps>(jobs.powerHelps),
      gridYear: told<GridYear>(jobs.gridYear),
      logEffect: told<LogEffect>(jobs.logEffect),
    },
    wanted: all.filter((job) => !(job.key in results)),
  };
}
