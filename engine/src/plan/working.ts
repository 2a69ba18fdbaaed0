import type { Given, Known } from '@kneewall/project';
import type { Recorder } from '../physics/recorder.ts';
import { unitOf } from './unit.ts';

/**
 * One line of a calculation. `formula` is arithmetic on the named inputs and evaluates to `value`, or one of the
 * words: `given` (from the project, `path` says where), `table` (read off a table), `solved` (found by iteration:
 * the inputs hold the residual that proves it).
 */
export type Step = {
  readonly symbol: string;
  readonly formula: string;
  readonly inputs: Readonly<Record<string, number>>;
  readonly value: number;
  readonly unit: string;
  readonly source: string;
  readonly path?: string;
  readonly known?: Known;
};

export type Working = readonly Step[];
export const wordFormulas: readonly string[] = ['given', 'table', 'solved'];

/** A recorder that also takes numbers straight from the project. It returns nothing, so no result can depend on it. */
export type WorkingRecorder = Recorder & {
  given(symbol: string, given: Given): void;
};

export function recordWorking(): { readonly recorder: WorkingRecorder; readonly steps: Working } {
  const steps: Step[] = [];
  const recorder: WorkingRecorder = {
    step: (symbol, formula, inputs, value, unit, source) => {
      steps.push({ symbol, formula, inputs: { ...inputs }, value, unit, source });
    },
    given: (symbol, g) => {
      const unit = unitOf(g.kind);
      steps.push({
        symbol,
        formula: 'given',
        inputs: {},
        value: g.likely,
        unit,
        source: 'project',
        path: g.path,
        known: g.known,
      });
    },
  };
  return { recorder, steps };
}
