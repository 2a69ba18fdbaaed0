import { type DraftOf, type Found, holding, telling } from '../plan/telling.ts';

/** A draft of this trade; all of them are about the drain. */
export const told = telling('condensate', 'drain');

/** One for the answer that holds, nothing for the others. */
export function answered<T extends string>(
  of: DraftOf,
  field: { readonly choice: T } | { readonly missing: true; readonly path: string },
  good: readonly T[],
): Found {
  const facts = 'choice' in field ? { ...of.facts, answer: field.choice } : of.facts;
  return told({ ...of, ...(facts ? { facts } : {}) }, holding(field, good, of.source));
}
