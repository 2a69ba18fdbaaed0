import type { TradeId } from '@kneewall/project';
import { attempt, type Outcome } from './outcome.ts';
import { recordWorking, type Working, type WorkingRecorder } from './working.ts';

/** Runs a computation and keeps its working under the trade’s word for it. */
export type Noted = <T>(word: string, work: (recorder: WorkingRecorder) => T) => Outcome<T>;

/** Workings go into `workings` as `<trade>/<word><suffix>`. */
export const noting =
  (trade: TradeId, workings: Record<string, Working>, suffix = ''): Noted =>
  (word, work) => {
    const { recorder, steps } = recordWorking();
    const value = attempt(() => work(recorder));
    workings[`${trade}/${word}${suffix}`] = steps;
    return value;
  };

/** For a computation whose working is kept elsewhere. */
export const silent: WorkingRecorder = { step: () => {}, given: () => {} };
