import type { Finder } from '../plan/trade.ts';
import { design } from './design.ts';
import { findings } from './findings.ts';

/** One's own power: whether sun, battery and generator carry the unit through the year. */
export const offgridFinder: Finder<'offgrid'> = {
  id: 'offgrid',
  phase: 'before',
  reads: ['power', 'site'],
  after: [],
  design,
  findings,
  looksAt: {
    reads: ['power', 'candidates'],
    trades: ['climate', 'circuit'],
    season: ['power', 'powerHelps', 'winters', 'recorded', 'foresight', 'gridYear'],
  },
};
