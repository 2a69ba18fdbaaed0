import { type Project, type ResolvedProject, resolver } from '@kneewall/project';
import type { PlainParts } from '../jobs/job.ts';
import { type Lend, lender } from './lend.ts';
import { madeOfTheSame } from './sameParts.ts';

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
  readonly lend: Lend;
  /** Lays documents over the schema; parts that an edit did not touch stay the same objects. */
  readonly resolve: (project: Project) => ResolvedProject;
};

export const coldMemo = (): Memo => ({
  kept: new Map(),
  computed: new Map(),
  plain: new WeakMap(),
  lend: lender(),
  resolve: resolver(),
});

/**
 * The value kept under a name when its inputs are the same, else computed and kept. Where what is computed is made of the
 * same as what was kept, that stays, so that whatever hangs on it stands.
 */
export function remembered<T>(memo: Memo, name: string, inputs: readonly unknown[], compute: () => T): T {
  const kept = memo.kept.get(name);
  if (kept && sameInputs(kept.inputs, inputs)) return kept.value as T;
  const made = compute();
  const value = kept && madeOfTheSame(kept.value, made) ? (kept.value as T) : made;
  memo.kept.set(name, { inputs, value });
  memo.computed.set(name, (memo.computed.get(name) ?? 0) + 1);
  return value;
}

function sameInputs(a: readonly unknown[], b: readonly unknown[]): boolean {
  if (a.length !== b.length) return false;
  for (let i = 0; i < a.length; i++) if (!Object.is(a[i], b[i])) return false;
  return true;
}
