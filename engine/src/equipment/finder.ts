import type { Finder } from '../plan/trade.ts';
import { design } from './design.ts';
import { findings } from './findings.ts';

/** Candidate units: what they give, how they run, and whether the supply carries them. */
export const equipmentFinder: Finder<'equipment', 'climate' | 'loads'> = {
  id: 'equipment',
  phase: 'before',
  reads: ['candidates', 'house.setpoints'],
  after: ['climate', 'loads'],
  design,
  findings,
  looksAt: {
    reads: ['candidates', 'items', 'power', 'house.setpoints'],
    trades: ['climate', 'loads'],
    agreement: true,
  },
};
