import type { Chosen, Given } from '@kneewall/project';
import { range, spanned, type Triple } from './triple.ts';

/** Air changes an hour at 50 Pa by what people feel. Source: `loads.draughts` (common practice). */
const draughts: Readonly<Record<string, Triple>> = {
  tight: [2, 3.5, 5],
  fair: [5, 7, 10],
  draughty: [8, 12, 18],
  leaky: [14, 20, 30],
};
/** Where nobody said, it spans from the tightest to the leakiest. */
export function draughtGiven(draught: Chosen): Given {
  const own = draughts[draught.choice] ?? [8, 12, 18];
  return {
    ...(draught.known === 'entered' ? range(own) : spanned(own, Object.values(draughts))),
    path: draught.path,
    kind: 'air-changes',
    known: 'assumed',
  };
}
