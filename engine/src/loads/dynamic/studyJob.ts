import { type Job, makeJob } from '../../jobs/job.ts';
import { rowOfRun, totalIndices, twoSets } from '../../physics/sampling/index.ts';
import { outputsAt, type Study, type StudyInputs, unknownsOf } from './study.ts';

export const studyKind = 'loads/study';
export const studyVersion = 4;
/** Samples of a study, and the seed that all devices share. */
export const studySamples = 1024;
export const studySeed = 1;

export const studyJob = (inputs: StudyInputs): Job => makeJob(studyKind, studyVersion, inputs, 'long');

export const totalsKind = 'loads/totals';
export const totalsVersion = 4;
/** The unknowns whose total share is asked, by path, and rows of each of the two sets. */
export type TotalsInputs = { readonly study: StudyInputs; readonly paths: readonly string[]; readonly rows: number };
export type Totals = readonly { readonly path: string; readonly first: number; readonly total: number }[];

export const totalsJob = (inputs: TotalsInputs): Job => makeJob(totalsKind, totalsVersion, inputs, 'long');

/** How many unknowns of the largest share are asked for, and rows of each set. */
const totalsMost = 12;
const rowsOfSet = 256;

export const totalsOf = (study: StudyInputs, { unknowns }: Study): TotalsInputs => ({
  study,
  paths: [...unknowns]
    .sort((a, b) => b.heating - a.heating || (a.path < b.path ? -1 : 1))
    .slice(0, totalsMost)
    .map((u) => u.path),
  rows: rowsOfSet,
});

/** Runs of the house that the totals take: two sets, and one for each unknown of the first with its column of the second. */
export const totalsCount = ({ paths, rows }: TotalsInputs): number => (paths.length + 2) * rows;

const unknownsOfTotals = ({ study, paths }: TotalsInputs) => unknownsOf(study).filter((g) => paths.includes(g.path));

/** The heating load of runs `from` up to `to`; the unknowns that are not asked for stay likely. */
export function totalsRows(inputs: TotalsInputs, from: number, to: number, tell: (done: number) => void): number[][] {
  const unknowns = unknownsOfTotals(inputs);
  const sets = twoSets(unknowns.length, inputs.rows, inputs.study.seed);
  return Array.from({ length: to - from }, (_, i) => {
    const at = from + i;
    if (i % 16 === 0) tell(i);
    const point = rowOfRun(sets, Math.floor(at / inputs.rows), at % inputs.rows);
    return [outputsAt(inputs.study, unknowns, point)[0] ?? Number.NaN];
  });
}

/** Share of the heating load's variance that each unknown has a hand in, alone and with others. */
export function totalsAnswers(inputs: TotalsInputs, all: readonly (readonly number[])[]): Totals {
  const unknowns = unknownsOfTotals(inputs);
  const runs = Array.from({ length: unknowns.length + 2 }, (_, run) =>
    Float64Array.from({ length: inputs.rows }, (_x, row) => all[run * inputs.rows + row]?.[0] ?? Number.NaN),
  );
  const [a = new Float64Array(), b = new Float64Array(), ...mixed] = runs;
  const shares = totalIndices(a, b, mixed);
  return unknowns.map((g, d) => ({ path: g.path, first: shares.first[d] ?? 0, total: shares.total[d] ?? 0 }));
}
