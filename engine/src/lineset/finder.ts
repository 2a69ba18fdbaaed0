import type { Finder } from '../plan/trade.ts';
import { design } from './design.ts';
import { findings } from './findings.ts';

/** The refrigerant line: where it reaches, which length to buy, and where the outdoor unit may be. */
export const linesetFinder: Finder<'lineset', 'equipment'> = {
  id: 'lineset',
  phase: 'agreed',
  reads: ['routes.lineset', 'candidates'],
  after: ['equipment'],
  design,
  findings,
  looksAt: { reads: ['routes.lineset', 'candidates', 'house.rooms'], trades: ['equipment'] },
};
