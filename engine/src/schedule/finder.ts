import type { Finder } from '../plan/trade.ts';
import { design } from './design.ts';
import { findings } from './findings.ts';
import { learn } from './learn.ts';

/** Who has time when, and which work fits there. The tasks come with the telling: see `sum` of the teller. */
export const scheduleFinder: Finder<'schedule', 'access' | 'materials' | 'paperwork'> = {
  id: 'schedule',
  phase: 'sum',
  reads: ['work.crew', 'work.windows', 'work.dates', 'work.done', 'work.putOff', 'work.off', 'site'],
  after: ['access', 'materials', 'paperwork'],
  design,
  learn,
  findings,
  looksAt: { reads: [], trades: [] },
};
