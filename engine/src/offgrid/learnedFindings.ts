import { unresolved } from '../plan/outcome.ts';
import type { PlanView } from '../plan/trade.ts';
import { type Found, found } from './draftOf.ts';

/** That the household is planned by what a log taught, and what was entered. Tells, and has no limit. */
export function learnedHousehold({ project }: PlanView): Found[] {
  const { learned, daily: entered } = project.power.household;
  const { daily, log, from, to } = learned;
  if ('missing' in daily) return [];
  const source = 'offgrid.learned-household';
  const facts = {
    ...{ log: log ?? '', from: from ?? '', to: to ?? '', hours: learned.hours ? 1 : 0 },
    ...('missing' in entered ? {} : { before: entered.likely }),
  };
  const of = { id: 'learned-household', holdPoint: 'season', consequence: 'money', kind: 'energy' } as const;
  return [
    found({ ...of, limit: {}, source, facts }, (rec) => {
      if ('missing' in daily) return unresolved('missing', daily.path);
      rec.step('E_day', 'table', {}, daily.likely, 'kWh', source);
      return { low: daily.low, likely: daily.likely, high: daily.high };
    }),
  ];
}
