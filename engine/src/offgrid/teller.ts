import type { Teller } from '../plan/trade.ts';
import { materials } from './materials.ts';
import { words } from './messages.ts';
import { readings } from './readings.ts';
import { sources } from './sources.ts';
import { tasks } from './tasks.ts';

export const offgridTeller: Teller<'offgrid'> = {
  id: 'offgrid',
  title: 'Own power',
  materials,
  tasks,
  readings,
  words,
  sources,
};
