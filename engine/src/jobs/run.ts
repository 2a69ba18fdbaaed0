import { isLogTable } from '@kneewall/project';
import { type PassageInputs, passageKind, passageVersion } from '../access/motion/passageJob.ts';
import { planWays } from '../access/motion/planWays.ts';
import { type BalanceInput, balanceAir } from '../air/balance/balanceAir.ts';
import { balanceKind, balanceVersion } from '../air/balance/balanceJob.ts';
import type { DuctSizingInput } from '../air/sizing/setUp.ts';
import { sizeDucts } from '../air/sizing/sizeDucts.ts';
import { sizingKind, sizingVersion } from '../air/sizing/sizingJob.ts';
import type { YearWeather } from '../climate/result.ts';
import { isWeatherYear, type WeatherYear } from '../climate/weather/weatherYear.ts';
import { summariseYear, yearJobKind, yearJobVersion } from '../climate/yearJob.ts';
import { balancingKind, balancingVersion } from '../commissioning/balancing/balancingJob.ts';
import { besideUnit } from '../commissioning/logs/beside/besideUnit.ts';
import { learnFromLog } from '../commissioning/logs/learnFromLog.ts';
import { type LogFitInputs, logFitKind, logFitVersion } from '../commissioning/logs/logJob.ts';
import { responsesKind, responsesVersion } from '../commissioning/responsesJob.ts';
import { responses } from '../coupling/asBuilt/responses.ts';
import type { ResponsesInputs } from '../coupling/asBuilt/system.ts';
import { balancing } from '../coupling/balancing/balancing.ts';
import type { BalancingInputs } from '../coupling/balancing/system.ts';
import { foresight } from '../coupling/foresight/foresight.ts';
import { foresightKind, foresightVersion } from '../coupling/foresight/foresightJob.ts';
import { improvements } from '../coupling/houseYear/improvements.ts';
import {
  type ImprovementsInputs,
  improvementsKind,
  improvementsVersion,
} from '../coupling/houseYear/improvementsJob.ts';
import { weatherOfYear, type YearTable, yearTable } from '../coupling/houseYear/table.ts';
import { gridYear } from '../coupling/power/grid/gridYear.ts';
import { type GridYearInputs, gridYearKind, gridYearVersion } from '../coupling/power/grid/gridYearJob.ts';
import { powerHelpsKind, powerHelpsVersion } from '../coupling/power/helps/helpsJob.ts';
import { powerYear } from '../coupling/power/powerYear.ts';
import { type PowerYearInputs, powerYearKind, powerYearVersion } from '../coupling/power/powerYearJob.ts';
import { unitYear } from '../coupling/season/unitYear.ts';
import { type UnitYearInputs, unitYearKind, unitYearVersion } from '../coupling/season/unitYearJob.ts';
import { compareWays } from '../coupling/ways/compareWays.ts';
import { type WaysInputs, waysKind, waysVersion } from '../coupling/ways/waysJob.ts';
import { recordedKind, recordedVersion } from '../coupling/winters/recordedJob.ts';
import { wintersKind, wintersVersion } from '../coupling/winters/wintersJob.ts';
import { type DaysInputs, daysJobKind, daysJobVersion, runDays } from '../loads/dynamic/daysJob.ts';
import { studyKind, studyVersion, totalsKind, totalsVersion } from '../loads/dynamic/studyJob.ts';
import { houseYearKind, houseYearVersion, type YearInputs } from '../loads/dynamic/yearJob.ts';
import { cutKind, cutVersion } from '../materials/cutting/cutJob.ts';
import { cutPlan } from '../materials/cutting/cutPlan.ts';
import type { CutInputs } from '../materials/cutting/result.ts';
import { BuildingRefused } from '../physics/building/index.ts';
import type { LinearSolver } from '../physics/dispatch/index.ts';
import { attempt } from '../plan/outcome.ts';
import { firstPlan, planJob } from '../schedule/planJob.ts';
import {
  firstPlanKind,
  firstPlanVersion,
  type WorkInputs,
  workPlanKind,
  workPlanVersion,
} from '../schedule/workJob.ts';
import type { Job } from './job.ts';
import { runSplit, type SplitJob, splitOf } from './split.ts';

/** What a host gives a job: parsed blobs by hash, an ear for progress, and a solver where `needsSolver` says so. */
export type JobHost = {
  readonly blob: (hash: string) => unknown;
  readonly tell: (done: number, total: number) => void;
  readonly solver?: LinearSolver;
};

/** Whether a job needs a solver of linear programmes, so that a host loads it only then. */
export const needsSolver = ({ kind }: Pick<Job, 'kind'>): boolean => kind === foresightKind;

/** The files alone. */
export type JobBlobs = Pick<JobHost, 'blob'>;

type Run = (inputs: unknown, host: JobHost) => unknown;

/** A job that could be split, for hosts that do not. */
const inOneGo =
  (kind: string): Run =>
  (inputs, host) => {
    const split = splitForHost({ kind, inputs }, host);
    if (!split) throw new Error(`assert: ${kind} can be split`);
    return runSplit(split, host.tell);
  };

type InYear = { readonly weather: YearWeather };
type Tell = JobHost['tell'];

/** A job that needs the weather year its inputs name. */
const throughYear =
  <Inputs extends InYear>(run: (inputs: Inputs, year: WeatherYear, tell: Tell) => unknown): Run =>
  (inputs, host) => {
    const given = inputs as Inputs;
    return run(given, yearFor(given, host), host.tell);
  };

const kinds: Readonly<Record<string, { readonly version: number; readonly run: Run }>> = {
  [yearJobKind]: {
    version: yearJobVersion,
    run: (inputs, host) => {
      const { blob } = inputs as { blob: string };
      return summariseYear(fileOf(blob, host), host.tell);
    },
  },
  [logFitKind]: {
    version: logFitVersion,
    run: (inputs, host) => {
      const { blob, given } = inputs as LogFitInputs;
      const table = host.blob(blob);
      if (!isLogTable(table)) throw new JobRefused('The log named in the project is not at hand, or cannot be read.');
      const beside = besideUnit(table);
      return { ...learnFromLog(table, given, host.tell), ...(beside ? { beside } : {}) };
    },
  },
  [daysJobKind]: { version: daysJobVersion, run: (inputs, host) => runDays(inputs as DaysInputs, host.tell) },
  [improvementsKind]: { version: improvementsVersion, run: throughYear<ImprovementsInputs>(improvements) },
  [unitYearKind]: { version: unitYearVersion, run: throughYear<UnitYearInputs>(unitYear) },
  [powerYearKind]: { version: powerYearVersion, run: throughYear<PowerYearInputs>(powerYear) },
  [foresightKind]: {
    version: foresightVersion,
    run: (inputs, host) => {
      if (!host.solver) throw new JobRefused('The solver that this needs could not be loaded.');
      const given = inputs as PowerYearInputs;
      return foresight(given, yearFor(given, host), host.solver, host.tell);
    },
  },
  [gridYearKind]: { version: gridYearVersion, run: throughYear<GridYearInputs>(gridYear) },
  [sizingKind]: {
    version: sizingVersion,
    run: (inputs) => attempt(() => sizeDucts(inputs as DuctSizingInput)),
  },
  [balanceKind]: {
    version: balanceVersion,
    run: (inputs) => attempt(() => balanceAir(inputs as BalanceInput)),
  },
  [cutKind]: { version: cutVersion, run: (inputs) => cutPlan(inputs as CutInputs) },
  [firstPlanKind]: { version: firstPlanVersion, run: (inputs) => firstPlan(inputs as WorkInputs) },
  [workPlanKind]: { version: workPlanVersion, run: (inputs, host) => planJob(inputs as WorkInputs, host.tell) },
  [responsesKind]: {
    version: responsesVersion,
    run: (inputs, host) => responses(inputs as ResponsesInputs, host.tell),
  },
  [balancingKind]: {
    version: balancingVersion,
    run: (inputs) => balancing(inputs as BalancingInputs),
  },
  [waysKind]: { version: waysVersion, run: throughYear<WaysInputs>(compareWays) },
  [passageKind]: { version: passageVersion, run: (inputs, host) => planWays(inputs as PassageInputs, host.tell) },
  [wintersKind]: { version: wintersVersion, run: inOneGo(wintersKind) },
  [recordedKind]: { version: recordedVersion, run: inOneGo(recordedKind) },
  [studyKind]: { version: studyVersion, run: inOneGo(studyKind) },
  [totalsKind]: { version: totalsVersion, run: inOneGo(totalsKind) },
  [powerHelpsKind]: { version: powerHelpsVersion, run: inOneGo(powerHelpsKind) },
  [houseYearKind]: {
    version: houseYearVersion,
    run: (inputs, host) => tableOfYear(inputs as YearInputs, host).answers,
  },
};

/** A house's year with its rows, for hosts that write them out. Throws `JobRefused` for a file that is not at hand. */
export const tableOfYear = (inputs: YearInputs, host: JobHost): YearTable =>
  yearTable(inputs, yearFor(inputs, host), host.tell);

/** A job as pieces, with the files a host has. */
export const splitForHost = (job: Pick<Job, 'kind' | 'inputs'>, host: JobBlobs): SplitJob | undefined =>
  splitOf(job, (inputs) => yearFor(inputs, host));

const yearFor = ({ weather }: InYear, host: JobBlobs): WeatherYear =>
  weatherOfYear(weather, (hash) => fileOf(hash, host));

function fileOf(hash: string, host: JobBlobs): WeatherYear {
  const year = host.blob(hash);
  if (!isWeatherYear(year)) throw new JobRefused('The weather file named in the project is not at hand.');
  return year;
}

/** A job that cannot be done here, in words for a person. */
export class JobRefused extends Error {}

/**
 * Does a job. Pure but for what the host lends it: equal inputs give equal results, wherever they are computed.
 * Throws `JobRefused` for a kind or version that this program does not know, or a file that is not at hand.
 */
export function runJob(job: Job, host: JobHost): unknown {
  const kind = kinds[job.kind];
  if (kind?.version !== job.version) throw new JobRefused('This version of the program cannot do that computation.');
  try {
    return kind.run(job.inputs, host);
  } catch (thrown) {
    if (!(thrown instanceof BuildingRefused)) throw thrown;
    throw new JobRefused(`The house cannot be run yet: “${thrown.at}”: ${thrown.message}.`);
  }
}
