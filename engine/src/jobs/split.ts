import type { YearWeather } from '../climate/result.ts';
import type { WeatherYear } from '../climate/weather/weatherYear.ts';
import { helpsAnswers } from '../coupling/power/helps/helpsAnswers.ts';
import { type PowerHelpsInputs, powerHelpsKind } from '../coupling/power/helps/helpsJob.ts';
import { changesOf, helpsRows } from '../coupling/power/helps/helpsRows.ts';
import { type RecordedInputs, recordedKind } from '../coupling/winters/recordedJob.ts';
import { recordedAnswers, recordedRows } from '../coupling/winters/recordedRows.ts';
import { winterRows } from '../coupling/winters/winterRows.ts';
import { wintersAnswers } from '../coupling/winters/wintersAnswers.ts';
import { type WintersInputs, wintersKind } from '../coupling/winters/wintersJob.ts';
import { type StudyInputs, studyAnswers, studyRows } from '../loads/dynamic/study.ts';
import {
  studyKind,
  type TotalsInputs,
  totalsAnswers,
  totalsCount,
  totalsKind,
  totalsRows,
} from '../loads/dynamic/studyJob.ts';
import type { Job } from './job.ts';

export type Rows = readonly (readonly number[])[];

/** A job made of many like pieces, which any number of workers may share: the rows are the same however it is split. */
export type SplitJob = {
  readonly count: number;
  /** Throws where something that the pieces need is not at hand, before any is handed out. */
  readonly ready?: () => void;
  /** Rows `from` up to `to`; `tell` hears how many of them are done. */
  readonly rows: (from: number, to: number, tell: (done: number) => void) => Rows;
  /** The answer from all rows in their order. */
  readonly answers: (rows: Rows) => unknown;
};

/** The weather year that inputs name; throws where its file is not at hand. */
type YearFor = (inputs: { readonly weather: YearWeather }) => WeatherYear;
const noYear: YearFor = () => {
  throw new RangeError('these pieces need the weather year');
};

/** A job as pieces, where it can be split. Pieces of a year ask for it when their rows are worked out. */
export function splitOf(
  { kind, inputs }: Pick<Job, 'kind' | 'inputs'>,
  yearFor: YearFor = noYear,
): SplitJob | undefined {
  if (kind === powerHelpsKind) {
    const helps = inputs as PowerHelpsInputs;
    return {
      count: changesOf(helps).length,
      ready: () => void yearFor(helps),
      rows: (from, to, tell) => helpsRows(helps, yearFor(helps), from, to, tell),
      answers: (rows) => helpsAnswers(helps, rows),
    };
  }
  if (kind === studyKind) {
    const study = inputs as StudyInputs;
    return {
      count: study.samples,
      rows: (from, to, tell) => studyRows(study, from, to, tell),
      answers: (rows) => studyAnswers(study, rows),
    };
  }
  if (kind === totalsKind) {
    const totals = inputs as TotalsInputs;
    return {
      count: totalsCount(totals),
      rows: (from, to, tell) => totalsRows(totals, from, to, tell),
      answers: (rows) => totalsAnswers(totals, rows),
    };
  }
  if (kind === wintersKind) {
    const winters = inputs as WintersInputs;
    return {
      count: winters.count,
      rows: (from, to, tell) => winterRows(winters, from, to, tell),
      answers: (rows) => wintersAnswers(winters, rows),
    };
  }
  if (kind === recordedKind) {
    const recorded = inputs as RecordedInputs;
    return {
      count: recorded.recorded.files.length,
      ready: () => {
        for (const file of recorded.recorded.files) yearFor(file);
      },
      rows: (from, to, tell) => recordedRows(recorded, yearFor, from, to, tell),
      answers: (rows) => recordedAnswers(recorded, rows),
    };
  }
  return undefined;
}

/** A split job done in one go. */
export function runSplit({ count, rows, answers }: SplitJob, tell: (done: number, total: number) => void): unknown {
  const all = rows(0, count, (done) => tell(done, count));
  tell(count, count);
  return answers(all);
}

/** Equal pieces of a split job, one for each worker. */
export function piecesOf(count: number, workers: number): readonly { readonly from: number; readonly to: number }[] {
  const each = Math.ceil(count / workers);
  return Array.from({ length: workers }, (_, w) => ({
    from: Math.min(w * each, count),
    to: Math.min((w + 1) * each, count),
  })).filter((p) => p.to > p.from);
}
