import type { Finder } from '../plan/trade.ts';
import { design } from './design.ts';
import { findings } from './findings.ts';

/** Water from the coil: trap, fall, pipe, pan, and frost on its way. */
export const condensateFinder: Finder<'condensate', 'climate' | 'loads' | 'equipment' | 'air'> = {
  id: 'condensate',
  phase: 'agreed',
  reads: ['routes.drain'],
  after: ['climate', 'loads', 'equipment', 'air'],
  design,
  findings,
  looksAt: { reads: ['routes.drain', 'candidates'], trades: ['equipment'], agreement: true },
};
