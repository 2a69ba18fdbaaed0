import { unresolved } from '../plan/outcome.ts';
import { type Found, telling } from '../plan/telling.ts';
import type { PlanView } from '../plan/trade.ts';
import type { ReadingFound, Visit } from './result.ts';
import { kindOfGroup } from './unitSuspect.ts';

/** Standard deviations to either side that nine readings in ten stay within, at one edge. */
const reach = 1.28;

/** Each reading against its band: off and good are said, all between is unknown with its way out. */
export function readingFindings(
  { id, found, doorsShut }: Visit,
  holdPoint: 'start' | 'season',
  { project }: PlanView,
): readonly Found[] {
  if (!found.ok) return [];
  const named = { ...project.house.rooms, ...project.routes.ducts.terminals };
  return found.value.readings.flatMap((r) =>
    r.verdict || r.aside ? [readingFinding(id, r, holdPoint, named, doorsShut === true)] : [],
  );
}

/** Where a reading is entered; supply air stands with the conditions. */
const pathOf = (id: string, field: string): string =>
  id.endsWith('#supply') ? `visits.${id.replace('#supply', '')}.supplyAir` : `readings.${id}.${field}`;

function readingFinding(
  visit: string,
  r: ReadingFound,
  holdPoint: 'start' | 'season',
  named: Readonly<Record<string, { readonly name: string | undefined }>>,
  shut: boolean,
): Found {
  const [what = '', subject] = r.expected.split(':');
  const { verdict } = r;
  return telling('commissioning', visit)(
    {
      id: `reading:${visit}:${r.id.replace('#', '-')}`,
      holdPoint,
      consequence: 'comfort',
      kind: r.group ? kindOfGroup[r.group] : 'number',
      limit: verdict?.band ?? {},
      source: 'commissioning.verdict',
      facts: {
        what,
        at: subject === undefined ? '' : (named[subject]?.name ?? subject),
        net: r.net,
        ...(shut ? { shut: 1 } : {}),
        aside: r.aside ?? '',
        because: r.because ?? '',
        ...(r.should === undefined ? {} : { should: r.should }),
        ...(verdict ? { inBand: verdict.inBand, way: verdict.way.kind } : {}),
        ...(verdict?.way.kind === 'again' ? { times: verdict.way.times } : {}),
        ...(r.asShare ? { share: 1 } : {}),
      },
    },
    (rec) => {
      if (r.aside === 'contradicts')
        return unresolved('missing', pathOf(r.id, 'value'), pathOf(r.because ?? r.id, 'value'));
      if (r.aside !== undefined || !verdict)
        return unresolved('missing', pathOf(r.id, r.aside === 'unknown' ? 'expected' : 'value'));
      if (verdict.word === 'cannot tell') return unresolved('missing', pathOf(r.id, 'repeats'));
      rec.step('x', 'table', {}, r.net, '', 'project');
      const spread = verdict.word === 'good' ? reach * verdict.error : 0;
      const { min, max } = verdict.band;
      // Good was said by the chance that it lies inside; its reach is cut at the band so that both say the same.
      return {
        low: Math.max(Math.min(r.net, min), r.net - spread),
        likely: r.net,
        high: Math.min(Math.max(r.net, max), r.net + spread),
      };
    },
  );
}
