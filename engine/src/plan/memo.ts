import type { PlainParts } from '../jobs/job.ts';

type Kept = { readonly inputs: readonly unknown[]; readonly value: unknown };

/**
 * What the last evaluation computed, by name, each with the inputs it came from. Inputs are compared by identity:
 * documents share every part an edit did not touch. `computed` counts how often each name was really redone.
 */
export type Memo = {
  readonly kept: Map<string, Kept>;
  readonly computed: Map<string, number>;
  /** Parts of jobs that several jobs, or the same jobs after an edit, have in common. */
  readonly plain: PlainParts;
};

export const coldMemo = (): Memo => ({ kept: new Map(), computed: new Map(), plain: new WeakMap() });

/** The value kept under a name when its inputs are the same, else computed and kept. */
export function remembered<T>(memo: Memo, name: string, inputs: readonly unknown[], compute: () => T): T {
  const kept = memo.kept.get(name);
  if (kept && kept.inputs.length === inputs.length && kept.inputs.every((input, i) => Object.is(input, inputs[i])))
    return kept.value as T;
  const value = compute();
  memo.kept.set(name, { inputs, value });
  memo.computed.set(name, (memo.computed.get(name) ?? 0) + 1);
  return value;
}
