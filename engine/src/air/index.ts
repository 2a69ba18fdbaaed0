import type { Trade } from '../plan/trade.ts';
import { design } from './design.ts';
import { findings } from './findings.ts';
import { learn } from './learn.ts';
import { materials } from './materials.ts';
import { words } from './messages.ts';
import { readings } from './readings.ts';
import { sources } from './sources.ts';
import { tasks } from './tasks.ts';

/** Ducts: what each room wants, what really flows, and what the attic takes of it. */
export const air: Trade<'air', 'climate' | 'loads' | 'equipment'> = {
  id: 'air',
  title: 'Air',
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
    'items',
  ],
  after: ['climate', 'loads', 'equipment'],
  design,
  learn,
  findings,
  materials,
  tasks,
  readings,
  words,
  sources,
};
