import { type Finding, holdPointTitle, holdPointWords, type Plan, tradeTitle } from '@kneewall/engine';
import { printQuantity, type Range, type System } from '@kneewall/project';
import { formatRange } from '@kneewall/project/quantity';
import { workByWindow } from '../calendar/workCalendar.ts';
import { clock } from '../calendar/workWords.ts';
import type { List } from './list.ts';

/** Every check: how it stands, the number and its limits in the kind's own unit, what mends it, and where the limit is from. */
export function checkList(plan: Plan, units: System): List {
  const inOrder = plan.findings.toSorted(
    (a, b) => holdPointWords.indexOf(a.holdPoint) - holdPointWords.indexOf(b.holdPoint),
  );
  return {
    file: 'checks.csv',
    title: 'Checks',
    heads: [
      ...['Hold point', 'Trade', 'Stands', 'What', 'Value', 'Low', 'Likely', 'High', 'Least', 'Most', 'Unit'],
      ...['Why', 'What mends it', 'Caution', 'Limit from', 'Id'],
    ],
    rows: inOrder.map((f) => {
      const range = rangeOf(f);
      return [
        ...[holdPointTitle[f.holdPoint].title, tradeTitle[f.trade], f.status, f.what],
        range && f.kind ? valueWords(range, f.kind, units) : undefined,
        ...[range?.low, range?.likely, range?.high, f.limit?.min, f.limit?.max, f.unit],
        ...[f.why, f.mend, f.caution, plan.sources[f.source]?.title ?? f.source, f.id],
      ];
    }),
  };
}

const rangeOf = ({ value }: Finding): Range | undefined =>
  typeof value === 'number' ? { low: value, likely: value, high: value } : value;

const valueWords = (range: Range, kind: NonNullable<Finding['kind']>, units: System): string =>
  range.low === range.high ? printQuantity(range.likely, kind, units) : formatRange(range, kind, units);

/** Every task: seconds for two handy people. */
export const taskList = ({ tasks }: Plan): List => ({
  file: 'tasks.csv',
  title: 'Tasks',
  heads: [
    ...['Hold point', 'Trade', 'What', 'Least s', 'Likely s', 'Most s', 'People', 'Where', 'After'],
    ...['Cautions', 'Safe stops', 'Id'],
  ],
  rows: tasks.map((t) => [
    ...[holdPointTitle[t.holdPoint].title, tradeTitle[t.trade], t.what],
    ...[t.duration.low, t.duration.likely, t.duration.high, t.people, t.place, t.after.join('; ')],
    ...[t.cautions.join(' '), t.safeStops.join('; '), t.id],
  ]),
});

/** The work window by window; empty while there is no plan of work. */
export const workList = (plan: Plan): List => ({
  file: 'work-plan.csv',
  title: 'Work plan',
  heads: ['Day', 'From', 'To', 'What', 'Part', 'Parts', 'People', 'Where', 'Stop only at'],
  rows: workByWindow(plan).flatMap(({ day, stays }) =>
    stays.map((s) => [
      ...[day, clock(s.from), clock(s.to), s.what, s.last, s.parts, s.people, s.place],
      s.safeStops.join('; '),
    ]),
  ),
});

/** What each reading should be, in the kind's own unit. */
export const readingList = ({ readings }: Plan, units: System): List => ({
  file: 'readings.csv',
  title: 'Expected readings',
  heads: ['Trade', 'What', 'Expected', 'Number', 'Good from', 'Good to', 'How', 'Caution', 'Id'],
  rows: readings.map((r) => [
    ...[tradeTitle[r.trade], r.what, printQuantity(r.expected, r.kind, units)],
    ...[r.expected, r.good.min, r.good.max, r.how, r.caution, r.id],
  ]),
});
