import type { Teller } from '../plan/trade.ts';
import { materials } from './materials.ts';
import { words } from './messages.ts';
import { readings } from './readings.ts';
import { sources } from './sources.ts';
import { tasks } from './tasks.ts';

export const airTeller: Teller<'air'> = {
  id: 'air',
  title: 'Air',
  materials,
  tasks,
  readings,
  words,
  sources,
};
