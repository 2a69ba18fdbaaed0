import type { Teller } from '../plan/trade.ts';
import { materials } from './materials.ts';
import { words } from './messages.ts';
import { readings } from './readings.ts';
import { sources } from './sources.ts';
import { tasks } from './tasks.ts';

export const accessTeller: Teller<'access'> = {
  id: 'access',
  title: 'Access',
  materials,
  tasks,
  readings,
  words,
  sources,
};
