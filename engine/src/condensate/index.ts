import type { Trade } from '../plan/trade.ts';
import { design } from './design.ts';
import { findings } from './findings.ts';
import { materials } from './materials.ts';
import { words } from './messages.ts';
import { readings } from './readings.ts';
import { sources } from './sources.ts';
import { tasks } from './tasks.ts';

/** Water from the coil: trap, fall, pipe, pan, and frost on its way. */
export const condensate: Trade<'condensate', 'climate' | 'loads' | 'equipment' | 'air'> = {
  id: 'condensate',
  title: 'Condensate',
  phase: 'agreed',
  reads: ['routes.drain'],
  after: ['climate', 'loads', 'equipment', 'air'],
  design,
  findings,
  materials,
  tasks,
  readings,
  words,
  sources,
  looksAt: { reads: ['routes.drain', 'candidates'], trades: ['equipment'] },
};
