import { inOrder, type ResolvedProject } from '@kneewall/project';
import type { AccessResult } from '../access/result.ts';
import type { MaterialsResult } from '../materials/result.ts';
import { attempt, required, unresolved } from '../plan/outcome.ts';
import { type Scenario, scenario } from '../plan/scenario.ts';
import type { TradeInput } from '../plan/trade.ts';
import { atticClock } from './atticClock.ts';
import type { ScheduleResult, WorkFrame } from './result.ts';
import { dayAt, offOf, putOffOf, quietOf, type Since, ticksOf } from './ticks.ts';

type Input = TradeInput<'access' | 'materials' | 'paperwork'>;
type Work = ResolvedProject['work'];

/** How long work takes, against a handy person. Common practice, no source: `schedule.pace`. */
const paceOf = { new: 1.5, handy: 1, practised: 0.8 } as const;
const perDay = 1440;
const dayNumber = (day: string): number => Date.parse(`${day}T00:00:00Z`) / 864e5;
/** Days that are planned at once. */
const daysMost = 200;

/** People and windows as minutes from the first day's midnight. The plan waits for the tasks. Pure. */
export function design(input: Input): ScheduleResult {
  const frame = attempt(() => frameOf(input));
  return {
    frame,
    work: frame.ok ? { ok: false, because: 'pending', paths: ['work.windows'] } : frame,
    workings: {},
    wanted: [],
  };
}

function frameOf({ project, upstream }: Input): WorkFrame {
  const s = scenario();
  const { work, site } = project;
  const crew = inOrder(work.crew);
  const named = namedWindows(work, s);
  const days = [...new Set(named.map((w) => w.day))].sort();
  const start = days[0] ?? '';
  if (crew.length === 0) return unresolved('missing', 'work.crew');
  const since = (day: string) => (dayNumber(day) - dayNumber(start)) * perDay;
  if (since(days.at(-1) ?? '') > daysMost * perDay) return unresolved('out-of-range', 'work.windows');
  const longitude = s.of(site.longitude);
  const clock = s.choice(work.dates.clock);
  const ahead = (s.maybe(site.timeZone) ?? Math.round(longitude / 15)) + (clock === 'summer' ? 1 : 0);
  const hotDay = required(upstream.access.hotDay as AccessResult['hotDay']);
  const atticMonths = hotDay.map((hours) => atticClock(hours, ahead - longitude / 15));
  const { doneBy } = work.dates;
  if (doneBy !== undefined && !Number.isFinite(dayNumber(doneBy))) return unresolved('missing', 'work.dates.doneBy');
  return {
    start,
    windows: named
      .map(({ id, day, from, length, people }) => ({
        id,
        day,
        from: since(day) + from,
        to: since(day) + from + length,
        people: Math.min(crew.length, Math.floor(people ?? crew.length)),
      }))
      .sort((a, b) => a.from - b.from || (a.id < b.id ? -1 : 1)),
    crew: crew.length,
    pace: crew.reduce((sum, [, who]) => sum + paceOf[s.choice(who.skill)], 0) / crew.length,
    attic: days.map((day) => ({
      from: since(day),
      minutes: atticMonths[Number(day.slice(5, 7)) - 1] ?? Array<number>(24).fill(0),
    })),
    atticMonths,
    ...(doneBy === undefined ? {} : { doneBy: since(doneBy) + perDay }),
    ahead,
    papers: upstream.paperwork.awaited.map(({ id, name, kind, comes }) => ({
      ...{ id, name, kind, at: (comes + since('1970-01-01') / perDay) * perDay },
    })),
    ...asItStands(work, upstream.materials.own, since, s),
  };
}

/** What is done, put off and wanted, what is off and when, what comes and what is here. */
function asItStands(work: Work, own: MaterialsResult['own'], since: Since, s: Scenario) {
  const { planFrom } = work.dates;
  const quiet = quietOf(work, s);
  const firstDay = since('1970-01-01') / perDay;
  return {
    ticks: ticksOf(work, since, s),
    putOff: putOffOf(work, since),
    ...(planFrom === undefined ? {} : { planFrom: dayAt(planFrom, since, 'work.dates.planFrom') }),
    ...(quiet ? { quiet } : {}),
    off: offOf(work, since, s),
    deliveries: own.deliveries.map(({ id, name, arrives, brings, goods, amounts, at }) => ({
      ...{ id, name, brings, goods, amounts },
      ...(arrives.ok ? { at: (arrives.value + firstDay) * perDay + at / 60 } : {}),
    })),
    stock: own.stock,
    here: [
      ...own.stock.flatMap((x) => x.line ?? []),
      ...own.orders.flatMap((x) => (x.state === 'ordered' ? [] : [x.line ?? '', x.of ?? ''])),
    ].filter((x) => x !== ''),
  };
}

type Named = {
  readonly id: string;
  readonly day: string;
  readonly from: number;
  readonly length: number;
  readonly people?: number;
};

function namedWindows({ windows }: Work, s: Scenario): Named[] {
  const listed = inOrder(windows);
  if (listed.length === 0) return unresolved('missing', 'work.windows');
  return listed.map(([id, w]): Named => {
    if (w.day === undefined || !Number.isFinite(dayNumber(w.day)))
      return unresolved('missing', `work.windows.${id}.day`);
    const people = s.maybe(w.people);
    const from = s.of(w.from) / 60;
    return {
      id,
      day: w.day,
      from,
      length: Math.min(s.of(w.duration) / 60, perDay - from),
      ...(people === undefined ? {} : { people }),
    };
  });
}
