import type { Trade } from '../plan/trade.ts';
import { design } from './design.ts';
import { findings } from './findings.ts';
import { materials } from './materials.ts';
import { words } from './messages.ts';
import { readings } from './readings.ts';
import { sources } from './sources.ts';
import { tasks } from './tasks.ts';

/** The weather the house meets: the cold night, the hot day, months and hours by temperature. */
export const climate: Trade<'climate'> = {
  id: 'climate',
  title: 'Climate',
  phase: 'before',
  reads: ['site'],
  after: [],
  looksUp: (project) => (project.site?.weather?.blob === undefined ? [] : [`blob:${project.site.weather.blob}`]),
  design,
  findings,
  materials,
  tasks,
  readings,
  words,
  sources,
};
