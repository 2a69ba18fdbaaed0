import { type Job, makeJob } from '../../jobs/job.ts';
import { rowOfRun, totalIndices, twoSets } from '../../physics/sampling/index.ts';
import { outputsAt, type Study, type StudyInputs, studyAnswers, studyRows, unknownsOf } from './study.ts';

export const studyKind = 'loads/study';
export const studyVersion = 1;
/** Samples of a study, and the seed that all devices share. */
export const studySamples = 1024;
export const studySeed = 1;

export const studyJob = (inputs: StudyInputs): Job => makeJob(studyKind, studyVersion, inputs, 'long');

type Tell = (done: number, total: number) => void;

export function runStudy(inputs: StudyInputs, tell: Tell): Study {
  const rows = studyRows(inputs, 0, inputs.samples, (done) => tell(done, inputs.samples));
  tell(inputs.samples, inputs.samples);
  return studyAnswers(inputs, rows);
}

export const totalsKind = 'loads/totals';
export const totalsVersion = 1;
/** The unknowns whose total share is asked, by path, and rows of each of the two sets. */
export type TotalsInputs = { readonly study: StudyInputs; readonly paths: readonly string[]; readonly rows: number };
export type Totals = readonly { readonly path: string; readonly first: number; readonly total: number }[];

export const totalsJob = (inputs: TotalsInputs): Job => makeJob(totalsKind, totalsVersion, inputs, 'long');

/** How many unknowns of the largest share are asked for, and rows of each set. */
const totalsMost = 12;
const totalsRows = 256;

export const totalsOf = (study: StudyInputs, { unknowns }: Study): TotalsInputs => ({
  study,
  paths: [...unknowns]
    .sort((a, b) => b.heating - a.heating || (a.path < b.path ? -1 : 1))
    .slice(0, totalsMost)
    .map((u) => u.path),
  rows: totalsRows,
});

/** Share of the heating load's variance that each unknown has a hand in, alone and with others. Others stay likely. */
export function runTotals({ study, paths, rows }: TotalsInputs, tell: Tell): Totals {
  const unknowns = unknownsOf(study).filter((g) => paths.includes(g.path));
  const sets = twoSets(unknowns.length, rows, study.seed);
  const total = (unknowns.length + 2) * rows;
  const runs = Array.from({ length: unknowns.length + 2 }, (_, run) =>
    Float64Array.from({ length: rows }, (_x, row) => {
      if (row % 16 === 0) tell(run * rows + row, total);
      return outputsAt(study, unknowns, rowOfRun(sets, run, row))[0] ?? Number.NaN;
    }),
  );
  tell(total, total);
  const [a = new Float64Array(), b = new Float64Array(), ...mixed] = runs;
  const shares = totalIndices(a, b, mixed);
  return unknowns.map((g, d) => ({ path: g.path, first: shares.first[d] ?? 0, total: shares.total[d] ?? 0 }));
}
