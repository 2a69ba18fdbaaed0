import type { Finding, Mark, Plan } from '@kneewall/engine';
import { emptyProject } from '@kneewall/project';
import { describe, expect, it } from 'vitest';
import { createSession } from '../session/session.ts';
import type { Store } from '../store/store.ts';
import type { FromPlanner, ToPlanner } from './messages.ts';
import { movedBetween } from './moved.ts';
import { createPlanner } from './planner.ts';

const finding = (id: string, status: Finding['status'], value: number): Finding => ({
  id,
  trade: 'air',
  subject: 'air handler',
  holdPoint: 'order',
  status,
  consequence: 'money',
  kind: 'pressure',
  value,
  what: id,
  why: '',
  mend: '',
  source: 'project',
  working: '',
});

const planOf = (...findings: Finding[]): Plan => ({
  engine: { version: '0', trades: ['air'] },
  findings,
  holdPoints: [],
  trades: {},
  materials: [],
  tasks: [],
  readings: [],
  workings: {},
  agreement: { converged: false, sweeps: 0, residual: 0 },
  season: {
    unitYear: { ok: false, because: 'missing', paths: [] },
    improvements: { ok: false, because: 'missing', paths: [] },
    ways: { ok: false, because: 'missing', paths: [] },
    power: { ok: false, because: 'missing', paths: [] },
    winters: { ok: false, because: 'missing', paths: [] },
    recorded: { ok: false, because: 'missing', paths: [] },
    foresight: { ok: false, because: 'missing', paths: [] },
    powerHelps: { ok: false, because: 'missing', paths: [] },
    gridYear: { ok: false, because: 'missing', paths: [] },
    lifeCost: { ok: false, because: 'missing', paths: [] },
  },
  sources: {},
  problems: [],
});

const nowhere: Store = {
  list: async () => [],
  load: async () => undefined,
  append: async () => undefined,
  putBlob: async () => undefined,
  blob: async () => undefined,
  putFile: async () => undefined,
  file: async () => undefined,
  reopen: () => undefined,
};

function setUp() {
  const sent: ToPlanner[] = [];
  let hear: (message: FromPlanner) => void = () => undefined;
  const session = createSession({ store: nowhere, clock: () => 0, device: 'here' });
  session.bar(undefined);
  const port = {
    post: (m: ToPlanner) => sent.push(m),
    listen: (heard: (m: FromPlanner) => void) => {
      hear = heard;
    },
  };
  const planner = createPlanner(session, { ...port, post: (m) => void port.post(m) }, () => 'us');
  const reply = (plan: Plan, revision = sent.at(-1)?.revision ?? 0) =>
    hear({ type: 'plan', revision, plan, wanted: [], ms: 1 });
  const mark = (marks: readonly Mark[]) => hear({ type: 'marks', revision: sent.at(-1)?.revision ?? 0, marks });
  return { sent, session, planner, reply, mark };
}

const rename = (after: string) => [{ path: ['about', 'name'], after }];

describe('the planner', () => {
  it('keeps the old plan in sight while the next is computed, and drops answers that came too late', () => {
    const { sent, session, planner, reply } = setUp();
    session.open(emptyProject, { kind: 'new' });
    const first = planOf(finding('a', 'ok', 10));
    reply(first);
    session.change(rename('x'));
    expect(planner.now()).toMatchObject({ plan: first, computing: true });
    reply(planOf(finding('a', 'fails', 99)), sent[0]?.revision);
    expect(planner.now().plan).toBe(first);
    const next = planOf(finding('a', 'tight', 12));
    reply(next);
    expect(planner.now()).toMatchObject({ plan: next, computing: false });
  });

  it('says how the findings stand before the first plan, and nothing of one project in another', () => {
    const { session, planner, reply, mark } = setUp();
    session.open(emptyProject, { kind: 'new' });
    mark([finding('a', 'fails', 1)]);
    expect(planner.now()).toMatchObject({ marks: [{ id: 'a', status: 'fails' }], computing: true });
    expect(planner.now().plan).toBe(undefined);
    const whole = planOf(finding('a', 'fails', 1), finding('b', 'ok', 2));
    reply(whole);
    expect(planner.now()).toMatchObject({ marks: whole.findings, computing: false });
    session.open(emptyProject, { kind: 'new' });
    expect(planner.now().marks).toBe(undefined);
  });

  it('says what moved since before a burst of edits, and because of which', () => {
    const { session, planner, reply } = setUp();
    session.open(emptyProject, { kind: 'new' });
    reply(planOf(finding('a', 'ok', 10)));
    session.change(rename('x'));
    session.change([{ path: ['site', 'coast'], after: 'coast' }]);
    reply(planOf(finding('a', 'fails', 20)));
    expect(planner.now().moved.map((m) => [m.id, m.before?.status, m.after?.status])).toEqual([['a', 'ok', 'fails']]);
    expect(planner.now().movedBy).toEqual(['site', 'coast']);
  });

  it('plans what is tried out beside the plan, a step late rather than never, and compares with before the tries', () => {
    const { sent, session, planner, reply } = setUp();
    session.open(emptyProject, { kind: 'new' });
    const first = planOf(finding('a', 'ok', 10));
    reply(first);
    session.tryOut(rename('x'));
    const tried = planOf(finding('a', 'fails', 99));
    const behind = sent.at(-1)?.revision;
    session.tryOut(rename('y'));
    reply(tried, behind);
    expect(planner.now()).toMatchObject({ plan: first, tried, computing: false, wanted: [] });
    session.change(rename('y'));
    expect(planner.now()).toMatchObject({ plan: first, computing: true });
    expect(planner.now().tried).toBe(undefined);
    reply(planOf(finding('a', 'fails', 20)));
    expect(planner.now().moved.map((m) => [m.before?.status, m.after?.status])).toEqual([['ok', 'fails']]);
  });

  it('compares nothing across two projects', () => {
    const { session, planner, reply } = setUp();
    session.open(emptyProject, { kind: 'new' });
    reply(planOf(finding('a', 'ok', 10)));
    session.open({ schema: 1, about: { name: 'Other' } }, { kind: 'new' });
    expect(planner.now().plan).toBe(undefined);
    reply(planOf(finding('a', 'fails', 20)));
    expect(planner.now().moved).toEqual([]);
  });

  it('sends edits as edits, so that the worker redoes only what they touch', () => {
    const { sent, session } = setUp();
    session.open(emptyProject, { kind: 'new' });
    session.change(rename('x'));
    session.undo();
    expect(sent.map((m) => m.type)).toEqual(['open', 'edit', 'edit']);
  });
});

describe('what moved between two plans', () => {
  it('is another status, another printed value, what is new and what is gone, and never a last bit', () => {
    const before = planOf(
      finding('same', 'ok', 10),
      finding('bit', 'ok', 0.1 + 0.2),
      finding('status', 'ok', 5),
      finding('gone', 'ok', 1),
    );
    const after = planOf(
      finding('same', 'ok', 10),
      finding('bit', 'ok', 0.3),
      finding('status', 'tight', 5),
      finding('value', 'ok', 2),
    );
    expect(movedBetween(before, after).map((m) => m.id)).toEqual(['status', 'value', 'gone']);
  });
});
