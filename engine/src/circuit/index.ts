import type { Trade } from '../plan/trade.ts';
import { design } from './design.ts';
import { findings } from './findings.ts';
import { materials } from './materials.ts';
import { words } from './messages.ts';
import { readings } from './readings.ts';
import { sources } from './sources.ts';
import { tasks } from './tasks.ts';

/** The electrical part: wires, protection, and whether one's own supply carries the unit. */
export const circuit: Trade<'circuit', 'climate' | 'loads' | 'equipment'> = {
  id: 'circuit',
  title: 'Circuit',
  phase: 'agreed',
  reads: ['candidates', 'power', 'routes.wires', 'site'],
  after: ['climate', 'loads', 'equipment'],
  design,
  findings,
  materials,
  tasks,
  readings,
  words,
  sources,
};
