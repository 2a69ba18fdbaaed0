import type { Teller } from '../plan/trade.ts';
import { materials } from './materials.ts';
import { words } from './messages.ts';
import { readings } from './readings.ts';
import { sources } from './sources.ts';
import { tasks } from './tasks.ts';
import { meaningOf } from './visitFound.ts';

export const commissioningTeller: Teller<'commissioning'> = {
  id: 'commissioning',
  title: 'Commissioning',
  materials,
  tasks,
  readings,
  // What readings mean is code that the first counts do not wait for.
  sum: meaningOf,
  hears: [],
  words,
  sources,
};
