import type { Finder } from '../plan/trade.ts';
import { design } from './design.ts';
import { findings } from './findings.ts';
import { learn } from './learn.ts';

/** What the house loses on the cold night and takes in at the hot hour. */
export const loadsFinder: Finder<'loads', 'climate'> = {
  id: 'loads',
  phase: 'before',
  reads: ['house', 'site'],
  after: ['climate'],
  design,
  learn,
  findings,
  looksAt: { reads: ['house', 'site'], trades: ['climate'] },
};
