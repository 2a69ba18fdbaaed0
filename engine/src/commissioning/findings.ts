import { required, unresolved } from '../plan/outcome.ts';
import { draftsOf, type Found, telling } from '../plan/telling.ts';
import type { Drafts, PlanView } from '../plan/trade.ts';
import { balanceFinding } from './balancing/balanceFinding.ts';
import { logFindings } from './logs/findings.ts';
import { powerFinding } from './powerFinding.ts';
import { readingFindings } from './readingFindings.ts';
import type { CommissioningResult, Visit } from './result.ts';
import { sinceFindings } from './seasons/sinceFindings.ts';
import { heatingTestFinding } from './startUp/heatingTestFinding.ts';

/** What was read, how it stands, which causes fit, and what is still to be read. */
export function findings(result: CommissioningResult, view: PlanView): Drafts {
  const visits = Object.values(result.visits);
  return draftsOf([
    firstStart(result),
    ...(result.startUp.unit ? [heatingTestFinding(result.startUp)] : []),
    ...sinceFindings(visits, view),
    ...(result.loose.length > 0 ? [loose(result)] : []),
    ...visits.flatMap((v, i) => {
      const holdPoint = i === 0 ? ('start' as const) : ('season' as const);
      return [
        conditions(v, holdPoint),
        ...(v.taken.length > 0 ? [causes(v, holdPoint, view)] : []),
        ...readingFindings(v, holdPoint, view),
        ...powerFinding(v, holdPoint, view),
        ...balanceFinding(v, view),
      ];
    }),
    ...logFindings(result.logs, view),
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

/** Readings that can be held against nothing. */
const loose = ({ loose: lacking }: CommissioningResult): Found =>
  telling('commissioning', 'readings')(
    {
      id: 'loose',
      holdPoint: 'start',
      consequence: 'money',
      kind: 'count',
      limit: { max: 0 },
      source: 'commissioning.first',
      facts: { count: lacking.length },
    },
    () => unresolved('missing', ...lacking.map(({ id, lacks }) => `readings.${id}.${lacks}`)),
  );

/** Readings of a visit can be held against something only in a state that is known, and steady. */
function conditions({ id, name, state, aside, taken }: Visit, holdPoint: 'start' | 'season'): Found {
  return telling('commissioning', id)(
    {
      id: `conditions:${id}`,
      holdPoint,
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

/** Chance above which something is held to be wrong, and how much below it is wanted. Source: `commissioning.verdict`. */
const wrongMost = 0.5;
const wrongMargin = 0.3;

function causes(visit: Visit, holdPoint: 'start' | 'season', { project }: PlanView): Found {
  const { id, name, found } = visit;
  const named = (subject: string | undefined) =>
    subject === undefined
      ? ''
      : (project.routes.ducts.terminals[subject]?.name ?? project.house.rooms[subject]?.name ?? subject);
  const split = (cause: string) => {
    const [kind = '', subject] = cause.split(':');
    return { kind, at: named(subject) };
  };
  return telling('commissioning', id)(
    {
      id: `causes:${id}`,
      holdPoint,
      consequence: 'money',
      kind: 'fraction',
      limit: { max: wrongMost },
      marginWanted: wrongMargin,
      source: 'commissioning.causes',
      facts: {
        name,
        ...(found.ok
          ? {
              suspects: found.value.suspects
                .slice(0, 3)
                .map((s) => ({ causes: s.causes.map(split), chance: s.chance })),
              next: found.value.next.slice(0, 1).map((n) => ({ ...n, ...split(n.id), id: n.id })),
              kinds: found.value.kinds,
            }
          : {}),
      },
    },
    (rec) => {
      const { sound, kinds } = required(found);
      if (kinds === 0) return unresolved('missing', 'readings');
      rec.step('p_none', 'solved', {}, sound, '', 'commissioning.causes');
      rec.step('p_wrong', '1 - p_none', { p_none: sound }, 1 - sound, '', 'commissioning.causes');
      return 1 - sound;
    },
  );
}
