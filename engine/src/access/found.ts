import type { Given, Missing } from '@kneewall/project';
import type { Draft } from '../plan/judge.ts';
import { attempt, unresolved } from '../plan/outcome.ts';
import { recordWorking, type Working, type WorkingRecorder } from '../plan/working.ts';

/** A draft with the working that ends in its value. */
export type Found = { readonly draft: Draft; readonly working: Working };
type Of = Omit<Draft, 'value' | 'working'>;
type Value = Parameters<typeof told>[1];

/** Runs what a finding is worth and keeps how it came about. */
export function told(
  of: Of,
  value: (rec: WorkingRecorder) => number | { low: number; likely: number; high: number },
): Found {
  const { recorder, steps } = recordWorking();
  return { draft: { ...of, value: attempt(() => value(recorder)), working: `access/${of.id}` }, working: steps };
}

/** A number of the project, taken down as it is read. */
export const entered =
  (symbol: string, field: Given | Missing): Value =>
  (rec) => {
    if ('missing' in field) return unresolved('missing', field.path);
    rec.given(symbol, field);
    return field.likely;
  };

/** 1 where the answer is one that holds, 0 for the others. */
export function answered<T extends string>(
  of: Omit<Of, 'kind' | 'limit'>,
  field: { readonly choice: T } | Missing,
  good: readonly T[],
): Found {
  const facts = 'choice' in field ? { ...of.facts, answer: field.choice } : of.facts;
  return told({ ...of, kind: 'count', limit: { min: 1 }, ...(facts ? { facts } : {}) }, (rec) => {
    if (!('choice' in field)) return unresolved('missing', field.path);
    const holds = good.includes(field.choice) ? 1 : 0;
    rec.step('holds', 'table', {}, holds, '', of.source);
    return holds;
  });
}
