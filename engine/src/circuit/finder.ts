import type { Finder } from '../plan/trade.ts';
import { design } from './design.ts';
import { findings } from './findings.ts';

/** The electrical part: wires, protection, and whether one's own supply carries the unit. */
export const circuitFinder: Finder<'circuit', 'climate' | 'loads' | 'equipment'> = {
  id: 'circuit',
  phase: 'agreed',
  reads: ['candidates', 'power', 'routes.wires', 'site'],
  after: ['climate', 'loads', 'equipment'],
  design,
  findings,
  looksAt: { reads: ['power', 'routes.wires'], trades: [] },
};
