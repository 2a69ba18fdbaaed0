import type { Range } from '@kneewall/project';
import { type Job, makeJob, type PlainParts } from '../../jobs/job.ts';
import type { DayWeather } from '../../loads/dynamic/designWeather.ts';
import type { PowerInputs } from '../../offgrid/result.ts';
import type { StandingDraw } from '../power/powerYearJob.ts';
import type { UnitYearInputs } from '../season/unitYearJob.ts';

/** House and unit before anything was learned, what a log told of each, and own power where there is any. */
export type LogEffectInputs = UnitYearInputs & {
  readonly night: DayWeather;
  readonly loss?: Range;
  readonly draw?: Range;
  /** kWh a day beside the unit and its hours, only on own power: there alone it moves any of these figures. */
  readonly household?: { readonly daily: Range; readonly hours: readonly number[] };
  readonly own?: { readonly power: PowerInputs; readonly standing: StandingDraw };
};

/** What a log's values move: W on the cold night, and of an ordinary year the kWh that the unit draws. */
export type EffectFigures = {
  readonly night: number;
  readonly electricity: number;
  /** Own power: litres and hours of the generator, hours in which heat is held back; nights on which the battery gives out without it. */
  readonly power?: {
    readonly litres: number;
    readonly generator: number;
    readonly held: number;
    readonly emptyNights: number;
  };
};

/** Figures at the ends and the middle of what the log told. */
export type EffectRange = { readonly low: EffectFigures; readonly likely: EffectFigures; readonly high: EffectFigures };

/** The plan by itself, and with each value that the log told taken into it. */
export type LogEffect = {
  readonly before: EffectFigures;
  readonly loss?: EffectRange;
  readonly power?: EffectRange;
  readonly household?: EffectRange;
  /** With all of them, where several are told. */
  readonly all?: EffectRange;
};

export const logEffectKind = 'coupling/log-effect';
export const logEffectVersion = 2;

export const logEffectJob = (inputs: LogEffectInputs, kept?: PlainParts): Job =>
  makeJob(logEffectKind, logEffectVersion, inputs, 'long', kept);
