import type { Finder } from '../plan/trade.ts';
import { design } from './design.ts';
import { findings } from './findings.ts';
import { learn } from './learn.ts';

/** What was read, against what the plan expects in that state, and which causes fit. */
export const commissioningFinder: Finder<'commissioning', 'climate' | 'loads' | 'equipment' | 'air'> = {
  id: 'commissioning',
  phase: 'sum',
  reads: [
    ...['visits', 'readings', 'logs', 'site', 'house', 'candidates', 'work.windows', 'power.supply'],
    'routes.ducts',
  ],
  after: ['climate', 'loads', 'equipment', 'air'],
  design,
  learn,
  findings,
  looksAt: { reads: ['power', 'routes.ducts.terminals', 'house.rooms'], trades: ['loads'] },
};
