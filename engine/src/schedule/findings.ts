import { required } from '../plan/outcome.ts';
import { type DraftOf, draftsOf, type Found, telling } from '../plan/telling.ts';
import type { Drafts } from '../plan/trade.ts';
import { askedOf } from './asked.ts';
import type { ScheduleResult, Unplaced, WorkAnswers } from './result.ts';

/** Common practice, no source: chances that are held against a plan. */
const overrunsMost = 0.25;
const chanceLeast = 0.8;

/** Whether all work has a place, ends at safe stops, stays out of the heat, and will be done in time. */
export function findings(result: ScheduleResult): Drafts {
  const { work, frame } = result;
  const told = telling('schedule', 'work');
  const one = (of: DraftOf, symbol: string, value: (w: WorkAnswers) => number): Found =>
    told(of, (rec) => {
      const found = value(required(work));
      rec.step(symbol, 'solved', {}, found, '', of.source);
      return found;
    });
  const unplaced = work.ok ? work.value.unplaced : [];
  const names = result.sum?.names ?? {};
  const found = [
    one(
      {
        ...placed,
        facts: { waits: unplaced.map((u) => ({ ...u, name: names[u.task] ?? u.task })), ...holding(result, names) },
      },
      'unplaced',
      (w) => w.unplaced.length,
    ),
    ...unplaced.filter((u) => u.because === 'no-window').map((u) => windowFor(u, names)),
    one({ ...stops, facts: { parts: work.ok ? work.value.parts.length : 0 } }, 'past', (w) => w.wrong.length),
    one(attic, 'over', (w) => 60 * w.atticOver),
    one({ ...overruns, facts: likeliest(result, names) }, 'past', (w) =>
      Math.max(0, ...w.windows.map((x) => 1 - x.inTime)),
    ),
    told({ ...crew, limit: { min: work.ok ? work.value.mostPeople : 1 } }, (rec) => {
      required(work);
      const { crew: people } = required(frame);
      rec.step('crew', 'table', {}, people, '', 'project');
      return people;
    }),
  ];
  if (work.ok && work.value.chance !== undefined) found.push(one(inTime, 'chance', (w) => w.chance ?? 0));
  return draftsOf([...found, ...askedOf(result)]);
}

const base = { kind: 'count', source: 'schedule.plan', consequence: 'harm' } as const;
const placed: DraftOf = { ...base, id: 'placed', holdPoint: 'decide', consequence: 'money', limit: { max: 0 } };
const stops: DraftOf = { ...base, id: 'safe-stops', holdPoint: 'lift', source: 'schedule.check', limit: { max: 0 } };
const attic: DraftOf = {
  ...base,
  id: 'attic',
  holdPoint: 'lift',
  kind: 'time',
  source: 'schedule.heat',
  limit: { max: 0 },
};
const overruns: DraftOf = {
  ...base,
  id: 'overruns',
  holdPoint: 'lift',
  kind: 'fraction',
  source: 'schedule.lives',
  limit: { max: overrunsMost },
};
const crew: DraftOf = { ...base, id: 'crew', holdPoint: 'decide', limit: {} };
const inTime: DraftOf = {
  ...base,
  id: 'done-by',
  holdPoint: 'decide',
  consequence: 'money',
  kind: 'fraction',
  source: 'schedule.lives',
  limit: { min: chanceLeast },
};

/** The first windows that would hold what has no place, and how many there are. */
function holding({ work, frame }: ScheduleResult, names: Readonly<Record<string, string>>): DraftOf['facts'] & object {
  if (!work.ok || !frame.ok) return {};
  const { toAdd } = work.value;
  const at = (minute: number) => new Date(Date.parse(`${frame.value.start}T00:00:00Z`) + minute * 60_000).toISOString();
  const told = toAdd.slice(0, 3).map((w) => ({
    ...{ name: names[w.task] ?? w.task, missing: w.missing, people: w.people },
    ...{ day: at(w.from).slice(0, 10), from: at(w.from).slice(11, 16), to: at(w.to).slice(11, 16) },
  }));
  return { toAdd: told, adds: toAdd.length };
}

/** A task of which a part is longer than any window. */
const windowFor = ({ task, longest = 0, needed = 0 }: Unplaced, names: Readonly<Record<string, string>>): Found =>
  telling('schedule', task)(
    {
      ...{ ...base, id: `window:${task}`, holdPoint: 'decide', kind: 'time', limit: { min: 60 * needed } },
      facts: { task: names[task] ?? task },
    },
    (rec) => {
      rec.step('longest', 'solved', {}, 60 * longest, 's', base.source);
      return 60 * longest;
    },
  );

/** The window that is likeliest to be overrun, with what is done in it. */
function likeliest(
  { work, frame }: ScheduleResult,
  names: Readonly<Record<string, string>>,
): DraftOf['facts'] & object {
  if (!work.ok || !frame.ok) return {};
  const [worst] = [...work.value.windows].sort((a, b) => a.inTime - b.inTime);
  if (!worst || worst.inTime === 1) return {};
  const day = frame.value.windows.find((w) => w.id === worst.window)?.day ?? '';
  return { day, tasks: worst.tasks.map((id) => ({ name: names[id] ?? id })) };
}
