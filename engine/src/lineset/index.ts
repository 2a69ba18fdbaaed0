import type { Trade } from '../plan/trade.ts';
import { design } from './design.ts';
import { findings } from './findings.ts';
import { materials } from './materials.ts';
import { words } from './messages.ts';
import { readings } from './readings.ts';
import { sources } from './sources.ts';
import { tasks } from './tasks.ts';

/** The refrigerant line: where it reaches, which length to buy, and where the outdoor unit may be. */
export const lineset: Trade<'lineset', 'equipment'> = {
  id: 'lineset',
  title: 'Line set',
  phase: 'agreed',
  reads: ['routes.lineset', 'candidates'],
  after: ['equipment'],
  design,
  findings,
  materials,
  tasks,
  readings,
  words,
  sources,
  looksAt: { reads: ['routes.lineset', 'candidates', 'house.rooms'], trades: ['equipment'] },
};
