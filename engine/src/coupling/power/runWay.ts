import type { YearWeatherSteps } from '../houseYear/run.ts';
import type { PowerRecord } from './powerLoop.kernel.ts';
import type { SetPointRule } from './setPointRule.kernel.ts';

/** A run: its record by step, and what it stands on. */
export type PowerRun = {
  readonly record: PowerRecord;
  readonly weather: YearWeatherSteps;
  readonly sun: Float64Array;
  /** Hours of a step. */
  readonly hours: number;
};

/** How a run is made: held back by power or not, the generator able to start or not. */
export type PowerWay = 'with-generator' | 'without-generator' | 'unlimited';

/** What else a run takes: K by step of the year on the set point, or a rule that decides them as the year goes; where the days before the year are taken down. */
export type RunWith = {
  readonly raised?: Float64Array;
  readonly rule?: SetPointRule;
  readonly settled?: PowerRecord;
};

export type PowerRuns = (way: PowerWay, tell: (done: number) => void, given?: RunWith) => PowerRun;
