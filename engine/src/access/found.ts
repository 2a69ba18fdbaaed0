import type { Given, Missing } from '@kneewall/project';
import { unresolved } from '../plan/outcome.ts';
import { type DraftOf, type Found, telling } from '../plan/telling.ts';
import type { WorkingRecorder } from '../plan/working.ts';

type Of = DraftOf & { readonly subject: string };
type Value = Parameters<ReturnType<typeof telling>>[1];

/** A draft of this trade about its subject. */
export const told = ({ subject, ...of }: Of, value: Value): Found => telling('access', subject)(of, value);

/** A number of the project, taken down as it is read. */
export const entered =
  (symbol: string, field: Given | Missing) =>
  (rec: WorkingRecorder): number => {
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
