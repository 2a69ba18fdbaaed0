import type { Finder } from '../plan/trade.ts';
import { design } from './design.ts';
import { findings } from './findings.ts';

/** What papers are asked for, by whom, by when; quotes at one scope; which unit costs least over its life. */
export const paperworkFinder: Finder<'paperwork'> = {
  id: 'paperwork',
  phase: 'agreed',
  reads: ['paperwork', 'work', 'items', 'candidates', 'routes.lineset', 'house', 'power'],
  after: [],
  design,
  findings,
  looksAt: { reads: ['candidates'], trades: [], season: ['lifeCost'] },
};
