import { type Found, telling } from '../../plan/telling.ts';
import type { PlanView } from '../../plan/trade.ts';
import type { Visit } from '../result.ts';
import { type Since, since } from './since.ts';

/** Readings to be repeated each season. Source: `commissioning.each-season`. */
const repeatedLeast = 3;
/** By how much a number may have moved like for like: a share, and K. Source: `commissioning.since`. */
const moved = { share: 0.15, kelvin: 2 };
/** Standard deviations to either side that nine readings in ten stay within. */
const reach = 1.645;

/** Each later visit held against the first, like for like. */
export function sinceFindings(visits: readonly Visit[], { project }: PlanView): readonly Found[] {
  const [first, ...later] = visits.filter((v) => v.found.ok);
  if (!first) return [];
  const nameOf = (subject: string | undefined): string =>
    subject === undefined ? '' : (project.routes.ducts.terminals[subject]?.name ?? subject);
  return later.flatMap((visit) => {
    const changes = since(first, visit);
    return [repeated(visit, changes), ...changes.map((c) => changed(first, visit, c, nameOf))];
  });
}

const repeated = ({ id, name }: Visit, changes: readonly Since[]): Found =>
  telling('commissioning', id)(
    {
      id: `repeated:${id}`,
      holdPoint: 'season',
      consequence: 'money',
      kind: 'count',
      limit: { min: repeatedLeast },
      source: 'commissioning.each-season',
      facts: { name },
    },
    (rec) => {
      rec.step('n', 'table', {}, changes.length, '', 'commissioning.each-season');
      return changes.length;
    },
  );

function changed(first: Visit, visit: Visit, c: Since, nameOf: (subject: string | undefined) => string): Found {
  const [what = '', subject] = c.expected.split(':');
  const most = c.group === 'temperature' ? moved.kelvin : moved.share;
  return telling('commissioning', visit.id)(
    {
      id: `since-first:${visit.id}:${c.expected.replaceAll(/[/:]/g, '-')}`,
      holdPoint: 'season',
      consequence: 'money',
      kind: c.group === 'temperature' ? 'temperature-difference' : 'fraction',
      limit: { min: -most, max: most },
      source: 'commissioning.since',
      facts: { what, at: nameOf(subject), before: first.name, now: visit.name },
    },
    (rec) => {
      rec.step('change', 'solved', {}, c.change, '', 'commissioning.since');
      return { low: c.change - reach * c.error, likely: c.change, high: c.change + reach * c.error };
    },
  );
}
