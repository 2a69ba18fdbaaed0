import { type Job, makeJob, type PlainParts } from '../../jobs/job.ts';
import type { HouseCase } from '../../loads/dynamic/houseCase.ts';
import type { DuctsInputs } from '../ducted/ductworks.ts';

/** A house, its design days and its year; and the ducts that its heat comes through, where they are known. */
export type ImprovementsInputs = HouseCase & { readonly ducts?: DuctsInputs };

export const improvementsKind = 'coupling/improvements';
export const improvementsVersion = 4;

export const improvementsJob = (inputs: ImprovementsInputs, kept?: PlainParts): Job =>
  makeJob(improvementsKind, improvementsVersion, inputs, 'long', kept);
