import type { Finder } from '../plan/trade.ts';
import { design } from './design.ts';
import { findings } from './findings.ts';
import { learn } from './learn.ts';
import { withSizing } from './sizing/withSizing.ts';

/** Ducts: what each room wants, what really flows, and what the attic takes of it. */
export const airFinder: Finder<'air', 'climate' | 'loads' | 'equipment'> = {
  id: 'air',
  phase: 'before',
  reads: [
    'routes.ducts',
    'house.rooms',
    'house.below',
    'house.setpoints',
    'house.exhaust',
    'house.flue',
    'house.flueRoom',
    'house.flueRuns',
    'candidates',
  ],
  addsFrom: ['items', 'work.stock', 'work.prices'],
  after: ['climate', 'loads', 'equipment'],
  design,
  add: withSizing,
  learn,
  findings,
  looksAt: {
    reads: ['routes.ducts', 'house', 'items'],
    trades: ['climate', 'loads', 'equipment'],
    agreement: true,
    season: ['unitYear', 'improvements', 'ways'],
  },
};
