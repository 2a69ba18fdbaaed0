import type { Trade } from '../plan/trade.ts';
import { design } from './design.ts';
import { findings } from './findings.ts';
import { learn } from './learn.ts';
import { materials } from './materials.ts';
import { words } from './messages.ts';
import { readings } from './readings.ts';
import { sources } from './sources.ts';
import { tasks } from './tasks.ts';

/** What the house loses on the cold night and takes in at the hot hour. */
export const loads: Trade<'loads', 'climate'> = {
  id: 'loads',
  title: 'Loads',
  phase: 'before',
  reads: ['house', 'site'],
  after: ['climate'],
  design,
  learn,
  findings,
  materials,
  tasks,
  readings,
  words,
  sources,
  looksAt: { reads: ['house', 'site'], trades: ['climate'] },
};
