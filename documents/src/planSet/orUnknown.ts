import type { Outcome } from '@kneewall/engine';

/** What is not known is written so, never left blank. */
export const orUnknown = <T>(outcome: Outcome<T>, words: (value: T) => string): string =>
  outcome.ok ? words(outcome.value) : 'unknown';
