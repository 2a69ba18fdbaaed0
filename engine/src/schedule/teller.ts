import type { Teller } from '../plan/trade.ts';
import { materials } from './materials.ts';
import { words } from './messages.ts';
import { readings } from './readings.ts';
import { sources } from './sources.ts';
import { sum } from './sum.ts';
import { tasks } from './tasks.ts';

export const scheduleTeller: Teller<'schedule'> = {
  id: 'schedule',
  title: 'Schedule',
  materials,
  tasks,
  readings,
  sum,
  hears: ['tasks', 'materials'],
  words,
  sources,
};
