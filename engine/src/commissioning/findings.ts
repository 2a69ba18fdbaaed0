import { required, unresolved } from '../plan/outcome.ts';
import { draftsOf, type Found, telling } from '../plan/telling.ts';
import type { Drafts, PlanView } from '../plan/trade.ts';
import { logFindings } from './logs/findings.ts';
import type { CommissioningResult, Visit } from './result.ts';

/** How many readings a first start asks for, and whether each visit's conditions are whole. */
export function findings(result: CommissioningResult, view: PlanView): Drafts {
  return draftsOf([
    firstStart(result),
    ...Object.values(result.visits).map(conditions),
    ...logFindings(result.logs, view.trades.loads),
  ]);
}

/** Readings at a first start: static pressure, power, supply and return air. Source: `commissioning.first`. */
const firstLeast = 4;

function firstStart({ visits }: CommissioningResult): Found {
  return telling('commissioning', 'readings')(
    {
      id: 'first-start',
      holdPoint: 'start',
      consequence: 'money',
      kind: 'count',
      limit: { min: firstLeast },
      source: 'commissioning.first',
    },
    (rec) => {
      const counts = Object.values(visits).flatMap((v) => (v.aside || v.taken.length === 0 ? [] : [v.taken.length]));
      if (counts.length === 0) return unresolved('missing', 'visits', 'readings');
      const most = Math.max(...counts);
      rec.step('n', 'table', {}, most, '', 'commissioning.first');
      return most;
    },
  );
}

/** Readings of a visit can be held against something only in a state that is known, and steady. */
function conditions({ id, name, state, aside, taken }: Visit): Found {
  return telling('commissioning', id)(
    {
      id: `conditions:${id}`,
      holdPoint: 'start',
      consequence: 'money',
      kind: 'count',
      limit: { min: 1 },
      source: 'commissioning.steady',
      facts: { name, aside: aside ?? '', readings: taken.length },
    },
    (rec) => {
      required(state);
      const good = aside ? 0 : 1;
      rec.step('steady', 'table', {}, good, '', 'commissioning.steady');
      return good;
    },
  );
}
