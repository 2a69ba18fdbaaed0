import type { Trade } from '../plan/trade.ts';
import { design } from './design.ts';
import { findings } from './findings.ts';
import { materials } from './materials.ts';
import { words } from './messages.ts';
import { readings } from './readings.ts';
import { sources } from './sources.ts';
import { tasks } from './tasks.ts';

/** Candidate units: what they give, how they run, and whether the supply carries them. */
export const equipment: Trade<'equipment', 'climate' | 'loads'> = {
  id: 'equipment',
  title: 'Equipment',
  phase: 'before',
  reads: ['candidates', 'house.setpoints'],
  after: ['climate', 'loads'],
  design,
  findings,
  materials,
  tasks,
  readings,
  words,
  sources,
};
