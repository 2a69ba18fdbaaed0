import type { Finder } from '../plan/trade.ts';
import { design } from './design.ts';
import { findings } from './findings.ts';
import { learn } from './learn.ts';

/** Boxes through openings, lifting, platform, and heat in the attic. */
export const accessFinder: Finder<'access', 'climate' | 'loads' | 'equipment'> = {
  id: 'access',
  phase: 'agreed',
  reads: ['routes.passages', 'routes.access', 'routes.lineset.place', 'candidates', 'work.windows'],
  after: ['climate', 'loads', 'equipment'],
  design,
  learn,
  findings,
  looksAt: { reads: ['routes.passages', 'routes.access', 'candidates', 'work.windows'], trades: [] },
};
