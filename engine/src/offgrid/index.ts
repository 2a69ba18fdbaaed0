import type { Trade } from '../plan/trade.ts';
import { design } from './design.ts';
import { findings } from './findings.ts';
import { materials } from './materials.ts';
import { words } from './messages.ts';
import { readings } from './readings.ts';
import { sources } from './sources.ts';
import { tasks } from './tasks.ts';

/** One's own power: whether sun, battery and generator carry the unit through the year. */
export const offgrid: Trade<'offgrid'> = {
  id: 'offgrid',
  title: 'Own power',
  phase: 'before',
  reads: ['power'],
  after: [],
  design,
  findings,
  materials,
  tasks,
  readings,
  words,
  sources,
};
