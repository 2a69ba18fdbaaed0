import type { AccessResult } from './result.ts';

/** Whether anything is to be hoisted by rope. */
export const hoistFor = ({ up, hoisted }: AccessResult): boolean => up === 'rope' && hoisted.ok;
