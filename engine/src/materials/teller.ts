import type { Teller } from '../plan/trade.ts';
import { materials, standsFor } from './materials.ts';
import { words } from './messages.ts';
import { readings } from './readings.ts';
import { sources } from './sources.ts';
import { sum } from './sum.ts';
import { tasks } from './tasks.ts';

export const materialsTeller: Teller<'materials'> = {
  id: 'materials',
  title: 'Materials',
  materials,
  standsFor,
  tasks,
  readings,
  sum,
  words,
  sources,
};
