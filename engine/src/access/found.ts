import type { Missing } from '@kneewall/project';
import { type DraftOf, type Found, holding, telling } from '../plan/telling.ts';

type Of = DraftOf & { readonly subject: string };
type Value = Parameters<ReturnType<typeof telling>>[1];

/** A draft of this trade about its subject. */
export const told = ({ subject, ...of }: Of, value: Value): Found => telling('access', subject)(of, value);

/** 1 where the answer is one that holds, 0 for the others. */
export function answered<T extends string>(
  of: Omit<Of, 'kind' | 'limit'>,
  field: { readonly choice: T } | Missing,
  good: readonly T[],
): Found {
  const facts = 'choice' in field ? { ...of.facts, answer: field.choice } : of.facts;
  const whole: Of = { ...of, kind: 'count', limit: { min: 1 }, ...(facts ? { facts } : {}) };
  return told(whole, holding(field, good, of.source));
}
