import { demos } from '@kneewall/demos';
import { deadlinesOf, evaluate, type Plan, runJob, workPlanKind } from '@kneewall/engine';
import { emptyProject, type Project } from '@kneewall/project';
import ICAL from 'ical.js';
import { describe, expect, it } from 'vitest';
import { foldedLine, textValue } from './lines.ts';
import { upkeepCalendar } from './upkeepCalendar.ts';
import { workByWindow, workCalendar } from './workCalendar.ts';

const file = async (id: string): Promise<Project> => (await demos.find((d) => d.id === id)?.load()) as Project;

function planned(project: Project): Plan {
  const first = evaluate(project, {});
  const job = first.wanted.find((j) => j.kind === workPlanKind);
  if (!job) return first.plan;
  return evaluate(project, { [job.key]: runJob(job, { blob: () => undefined, tell: () => undefined }) }).plan;
}

const dayOf = (minute: number) => new Date(Date.UTC(2027, 4, 1) + minute * 60_000).toISOString().slice(0, 10);

describe('the plan of work as a calendar', () => {
  it('is read back by a general library: the same events, in UTC, with their words', async () => {
    const plan = planned(await file('tern-ledge'));
    const text = workCalendar(plan) ?? '';
    const all = new ICAL.Component(ICAL.parse(text)).getAllSubcomponents('vevent').map((c) => new ICAL.Event(c));
    // The warranty's form takes no window and has its last day, a whole one.
    const events = all.filter((e) => !e.startDate.isDate);
    const [form] = all.filter((e) => e.startDate.isDate);
    expect(form?.summary).toContain('Register “Warranty of the 24”');
    const [first] = plan.trades.schedule ? deadlinesOf(plan.trades.schedule) : [];
    expect(form?.startDate.toString()).toBe(dayOf(first ? first.from + 60 * 1440 : 0));
    const stays = workByWindow(plan).flatMap((w) => w.stays);
    expect(events.length).toBe(stays.length);
    // Summer time on the island is three hours behind Greenwich; the plan begins on the first of May.
    const at = (minute: number) => Date.UTC(2027, 4, 1, 3) + minute * 60_000;
    events.forEach((e, i) => {
      const stay = stays[i];
      expect(e.summary).toBe(stay?.what);
      expect(e.startDate.toJSDate().getTime()).toBe(at(stay?.from ?? 0));
      expect(e.endDate.toJSDate().getTime()).toBe(at(stay?.to ?? 0));
      expect(e.description).toContain(stay?.safeStops[0]);
    });
    expect(new Set(events.map((e) => e.uid)).size).toBe(events.length);
    const lines = text.split('\r\n');
    expect(lines.every((line) => !/[\r\n]/.test(line) && new TextEncoder().encode(line).length <= 75)).toBe(true);
    expect(text.endsWith('END:VCALENDAR\r\n')).toBe(true);
  });

  it('is not there while there is no plan', () => {
    expect(workCalendar(evaluate(emptyProject, {}).plan)).toBeUndefined();
  });
});

it('has what every season asks for on its days, read back by a general library', async () => {
  const { plan } = evaluate(await file('juniper-flat'), {});
  const events = new ICAL.Component(ICAL.parse(upkeepCalendar(plan) ?? '')).getAllSubcomponents('vevent');
  const read = events.map((c) => new ICAL.Event(c));
  const filter = read.find((e) => e.summary.includes('filter against a lamp'));
  expect(filter?.isRecurring()).toBe(true);
  const next = filter?.iterator();
  const [first, second] = [next?.next(), next?.next()];
  expect(first?.isDate).toBe(true);
  expect((second?.month ?? 0) - (first?.month ?? 0)).toBe(1);
  expect(read.filter((e) => e.summary.startsWith('Every spring and autumn')).map((e) => e.startDate.month)).toEqual(
    expect.arrayContaining([4, 10]),
  );
  expect(upkeepCalendar(evaluate(emptyProject, {}).plan)).toBeUndefined();
});

it('folds between letters, at octets', () => {
  const folded = foldedLine(`SUMMARY:${'é'.repeat(80)}`);
  expect(folded.split('\r\n').map((l) => new TextEncoder().encode(l).length)).toEqual([74, 75, 21]);
  expect(folded.replaceAll('\r\n ', '')).toBe(`SUMMARY:${'é'.repeat(80)}`);
  expect(textValue('a, b; c\\d\ne')).toBe('a\\, b\\; c\\\\d\\ne');
});
