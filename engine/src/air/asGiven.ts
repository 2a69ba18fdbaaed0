import type { Given, QuantityKind, Range } from '@kneewall/project';

/** A range found upstream as one more uncertain input, so that a spread carries it on beside what was entered. */
export const asGiven = (path: string, kind: QuantityKind, { low, likely, high }: Range): Given => ({
  path,
  kind,
  known: 'estimated',
  low,
  likely,
  high,
});
