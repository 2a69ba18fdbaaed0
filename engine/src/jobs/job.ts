import { canonicalJson, hashOf } from '@kneewall/project';

/** A long computation, as data. Two devices with equal inputs make the same key and may share the result. */
export type Job = {
  readonly key: string;
  readonly kind: string;
  readonly version: number;
  readonly inputs: unknown;
  readonly cost: 'short' | 'long';
};

export type JobMessage =
  | { readonly type: 'start'; readonly id: number; readonly key: string; readonly job: Job }
  | {
      readonly type: 'progress';
      readonly id: number;
      readonly key: string;
      readonly done: number;
      readonly total: number;
    }
  | { readonly type: 'result'; readonly id: number; readonly key: string; readonly result: unknown }
  | { readonly type: 'failed'; readonly id: number; readonly key: string; readonly problem: string }
  | { readonly type: 'cancel'; readonly id: number; readonly key: string };

/** Rounds every number to 9 significant digits, so that a last bit makes no new job. */
function rounded(value: unknown): unknown {
  if (typeof value === 'number') return Number(value.toPrecision(9));
  if (Array.isArray(value)) return value.map(rounded);
  if (value === null || typeof value !== 'object') return value;
  return Object.fromEntries(Object.entries(value).map(([k, v]) => [k, rounded(v)]));
}

export function makeJob(kind: string, version: number, inputs: unknown, cost: Job['cost']): Job {
  const plain = rounded(inputs);
  return { key: hashOf(canonicalJson({ kind, version, inputs: plain })), kind, version, inputs: plain, cost };
}
