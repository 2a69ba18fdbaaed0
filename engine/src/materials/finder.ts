import type { Finder } from '../plan/trade.ts';
import { learn } from './cutting/learn.ts';
import { design } from './design.ts';
import { findings } from './findings.ts';

/** What the person has, pays, ordered, and when it comes. The lines of the other trades come with the telling: see `sum` of the teller. */
export const materialsFinder: Finder<'materials'> = {
  id: 'materials',
  phase: 'sum',
  reads: [
    'candidates',
    'items',
    'work.stock',
    'work.prices',
    'work.deliveries',
    'work.dates',
    'work.windows',
    'routes.ducts',
  ],
  after: [],
  design,
  learn,
  findings,
  looksAt: { reads: ['routes.passages', 'routes.ducts', 'candidates', 'items'], trades: ['air'] },
};
