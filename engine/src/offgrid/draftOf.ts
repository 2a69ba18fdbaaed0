import { telling } from '../plan/telling.ts';

export type { Found } from '../plan/telling.ts';

/** A draft of this trade, its value from a computation that records its steps. */
export const found = telling('offgrid', 'power');
