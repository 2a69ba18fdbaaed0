import type { Range } from '@kneewall/project';
import { type Job, makeJob, type PlainParts } from '../../../jobs/job.ts';
import type { PowerCosts } from '../../../offgrid/result.ts';
import type { DuctsInputs } from '../../ducted/ductworks.ts';
import type { UnitInputs } from '../../season/unitInputs.ts';
import type { PowerYearInputs, StandingDraw } from '../powerYearJob.ts';

/** Another unit that might be chosen, as its year behind the same ducts needs it. */
export type OtherUnit = {
  readonly id: string;
  readonly unit: UnitInputs;
  readonly standing: StandingDraw;
  readonly speeds: DuctsInputs['speeds'];
  readonly coil?: DuctsInputs['coil'];
  /** What it costs more than the chosen one, where both prices are known. */
  readonly dearer?: Range;
};

/** House, unit and power as they are set up, what may take their place, and what it costs. */
export type PowerHelpsInputs = PowerYearInputs & {
  readonly others: readonly OtherUnit[];
  readonly costs: PowerCosts;
};

export const powerHelpsKind = 'coupling/power-helps';
export const powerHelpsVersion = 2;

export const powerHelpsJob = (inputs: PowerHelpsInputs, kept?: PlainParts): Job =>
  makeJob(powerHelpsKind, powerHelpsVersion, inputs, 'short', kept);
