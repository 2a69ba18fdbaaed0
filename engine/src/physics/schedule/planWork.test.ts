import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { firstLeft } from './bounds.ts';
import { checkPlan, type PlanOptions, planWork, type WorkSpec, type WorkTask, wayTo } from './index.ts';

/** Length, people, after: the invented crew of three. */
const crewTasks = {
  A: [3, 2, []],
  B: [2, 1, []],
  C: [4, 2, []],
  D: [2, 2, ['A']],
  E: [3, 1, ['B']],
  F: [1, 3, ['C', 'D']],
  G: [2, 1, ['E']],
} as const;

function crew(people: number, not: readonly string[] = []): WorkSpec {
  return {
    horizon: 40,
    step: 1,
    resources: [{ id: 'people', units: people }],
    calendars: [{ id: 'heat', shut: [{ from: 3, to: 6 }] }],
    tasks: Object.entries(crewTasks).map(([id, [minutes, units, after]]) => ({
      id,
      pieces: [{ id: 'all', minutes }],
      needs: [{ resource: 'people', units }],
      after: after.map((task) => ({ task })),
      calendars: not.includes(id) ? ['heat'] : [],
    })),
  };
}

function planned(spec: WorkSpec, options?: PlanOptions) {
  const { plan, problems } = planWork(spec, options);
  if (!plan) throw new Error(JSON.stringify(problems));
  expect(checkPlan(spec, plan.pieces)).toEqual([]);
  return plan;
}

const by = <K extends 'from' | 'slack'>(plan: ReturnType<typeof planned>, key: K) =>
  Object.fromEntries(plan.pieces.map((p) => [p.task, p[key]]));

const one = (rest: Partial<WorkTask> & { readonly id: string }, minutes = 60): WorkTask => ({
  pieces: [{ id: 'all', minutes }],
  needs: [{ resource: 'people', units: 1 }],
  ...rest,
});
const work = (tasks: readonly WorkTask[], rest: Partial<WorkSpec> = {}): WorkSpec => ({
  horizon: 1440,
  resources: [{ id: 'people', units: 2 }],
  calendars: [],
  tasks,
  ...rest,
});
const defined = <T extends object>(x: T): T =>
  Object.fromEntries(Object.entries(x).filter(([, v]) => v !== undefined)) as T;
const codes = (spec: WorkSpec) => planWork(spec).problems.map(({ code, task, names }) => ({ code, task, names }));

describe('a crew of three, by hand and by trying everything', () => {
  it('takes 7 where there are people enough, with the floats of the longest path', () => {
    const plan = planned(crew(99));
    expect([plan.end, plan.bound, plan.proved]).toEqual([7, 7, true]);
    expect(by(plan, 'from')).toEqual({ A: 0, B: 0, C: 0, D: 3, E: 2, F: 5, G: 5 });
    expect(by(plan, 'slack')).toEqual({ A: 1, B: 0, C: 2, D: 1, E: 0, F: 1, G: 0 });
  });

  it.each([
    [[], 10],
    [['C'], 11],
    [['A', 'D'], 10],
  ] as const)('of three takes, %s not in the heat, %i', (not, end) => {
    const plan = planned(crew(3, not));
    expect([plan.end, plan.bound, plan.proved, plan.gap]).toEqual([end, end, true, 0]);
  });
});

describe('windows', () => {
  const free = [
    { from: 0, to: 40 },
    { from: 100, to: 160 },
  ];
  const inWindows = (minutes: number) =>
    work([one({ id: 'trap' }, minutes)], { resources: [{ id: 'people', units: 1, there: free }] });

  it('of forty minutes take a piece of forty, and one of more waits for a longer one', () => {
    expect(planned(inWindows(40)).pieces[0]).toMatchObject({ from: 0, to: 40 });
    expect(planned(inWindows(41)).pieces[0]).toMatchObject({ from: 100, to: 145, why: { because: 'window' } });
  });

  it('none long enough: the piece, what it needs and the longest window are named', () => {
    expect(planWork(inWindows(61)).problems).toEqual([
      { code: 'no-window', grade: 'refused', task: 'trap', piece: 'all', names: [], minutes: 60, needed: 65 },
    ]);
  });

  it('a task is left only at its safe stops', () => {
    const pieces = [
      { id: 'open', minutes: 30 },
      { id: 'join', minutes: 50 },
      { id: 'shut', minutes: 10, wait: 20 },
    ];
    const far = [...free, { from: 200, to: 260 }];
    const spec = work([{ ...one({ id: 'duct' }), pieces }], { resources: [{ id: 'people', units: 1, there: far }] });
    expect(planned(spec).pieces.map((p) => [p.piece, p.from, p.to])).toEqual([
      ['open', 0, 30],
      ['join', 100, 150],
      ['shut', 200, 210],
    ]);
  });

  it('half an hour of work in the hour doubles the time on the clock', () => {
    const heat = [{ from: 0, to: 600, minutesAnHour: 30 }];
    const spec = work([one({ id: 'attic', calendars: ['heat'] })], { calendars: [{ id: 'heat', heat }] });
    expect(planned(spec).pieces[0]).toMatchObject({ from: 0, to: 120 });
  });

  it('three points are planned with their mean', () => {
    const spec = work([{ ...one({ id: 'a' }), pieces: [{ id: 'all', minutes: { low: 2, likely: 3, high: 7 } }] }], {
      step: 0.5,
    });
    expect(planned(spec).end).toBe(3.5);
  });
});

describe('what cannot be is said, and where', () => {
  it('a circle is named in its order', () => {
    const after = (task: string) => ({ after: [{ task }] });
    const tasks = [
      one({ id: 'a' }),
      one({ id: 'b', ...after('d') }),
      one({ id: 'c', ...after('b') }),
      one({ id: 'd', ...after('c') }),
    ];
    expect(codes(work(tasks))).toEqual([{ code: 'circle', task: undefined, names: ['b', 'c', 'd'] }]);
  });

  it('names that are not there, numbers that are none, too few of something', () => {
    expect(codes(work([one({ id: 'a', after: [{ task: 'x' }] })]))).toEqual([
      { code: 'unknown-name', task: 'a', names: ['x'] },
    ]);
    expect(codes(work([one({ id: 'a' }, Number.NaN)]))[0]?.code).toBe('bad-number');
    expect(codes(work([one({ id: 'a', needs: [{ resource: 'people', units: 3 }] })]))).toEqual([
      { code: 'not-enough', task: 'a', names: ['people'] },
    ]);
    expect(codes(work([one({ id: 'a' }), one({ id: 'a' })]))[0]?.code).toBe('named-twice');
  });

  it('a delivery after its deadline, and a deadline that what comes before makes impossible, come with a plan', () => {
    const spec = work([
      one({ id: 'a', release: 600, deadline: 500 }),
      one({ id: 'b' }, 100),
      one({ id: 'c', after: [{ task: 'b', wait: 30 }], deadline: 180 }),
    ]);
    const { plan, problems } = planWork(spec);
    expect(problems).toEqual([
      { code: 'release-after-deadline', grade: 'late', task: 'a', names: [], minutes: 600 },
      { code: 'deadline-too-early', grade: 'late', task: 'c', names: [], minutes: 190 },
    ]);
    expect(plan?.late).toEqual([
      { task: 'a', deadline: 500, end: 660 },
      { task: 'c', deadline: 180, end: 190 },
    ]);
  });

  it('deadlines that only together cannot be kept are proved so', () => {
    const both = { needs: [{ resource: 'people', units: 2 }], deadline: 100 };
    const { plan, problems } = planWork(work([one({ id: 'a', ...both }), one({ id: 'b', ...both })]));
    expect(problems).toEqual([]);
    expect(plan).toMatchObject({ lateProved: true, end: 120, late: [{ deadline: 100, end: 120 }] });
  });

  it('a pin before what has to come first', () => {
    const pinned = { pieces: [{ id: 'all', minutes: 60, pinned: { from: 10, to: 70 } }] };
    const spec = work([one({ id: 'a' }), { ...one({ id: 'b', after: [{ task: 'a' }] }), ...pinned }]);
    expect(codes(spec)).toEqual([{ code: 'pinned-clash', task: 'b', names: ['a'] }]);
  });

  it('work that does not fit before the calendars end', () => {
    const whole = Array.from({ length: 5 }, (_, i) =>
      one({ id: `t${i}`, needs: [{ resource: 'people', units: 2 }] }, 300),
    );
    expect(planWork(work(whole)).problems).toEqual([{ code: 'does-not-fit', grade: 'refused', names: ['t4'] }]);
  });
});

describe('a plan says why', () => {
  it('who holds what is needed, what comes first, and the delivery', () => {
    const spec = work(
      [
        one({ id: 'a', priority: 1 }),
        one({ id: 'b' }),
        one({ id: 'c', after: [{ task: 'b' }], needs: [] }),
        one({ id: 'd', release: 300 }),
      ],
      { resources: [{ id: 'people', units: 1 }] },
    );
    const why = Object.fromEntries(planned(spec).pieces.map((p) => [p.task, p.why]));
    expect(why).toEqual({
      a: { because: 'now', names: [] },
      b: { because: 'resource', resource: 'people', names: ['a'] },
      c: { because: 'after', names: ['b'] },
      d: { because: 'release', names: [] },
    });
  });
});

describe('the way to an end', () => {
  it('leads from what nothing keeps to the last piece', () => {
    const spec = work(
      [one({ id: 'a', priority: 1 }), one({ id: 'b', after: [{ task: 'a', wait: 45 }] }), one({ id: 'c', needs: [] })],
      { resources: [{ id: 'people', units: 1 }] },
    );
    const plan = planned(spec);
    expect(wayTo(plan).map((p) => p.task)).toEqual(['a', 'b']);
    expect(wayTo(plan, 'c').map((p) => p.task)).toEqual(['c']);
    expect(wayTo(plan, 'x')).toEqual([]);
  });
});

describe('whatever is entered', () => {
  it('gives a plan that holds, or problems, and never throws', () => {
    const minute = fc.integer({ min: 0, max: 60 });
    // What nobody means: spoils one number in an entry.
    const spoilt = fc.constantFrom(Number.NaN, Number.POSITIVE_INFINITY, -9, 0.3);
    const span = fc
      .tuple(fc.integer({ min: -9, max: 300 }), fc.integer({ min: 0, max: 200 }))
      .map(([from, length]) => ({ from, to: from + length }));
    const few = fc.constantFrom(1, 1, 1, 1, 2, 2, 0);
    const name = fc.constantFrom('a', 'b', 'c');
    const maybe = <T>(x: fc.Arbitrary<T>) =>
      fc.oneof({ weight: 4, arbitrary: fc.constant(undefined) }, { weight: 1, arbitrary: x });
    const piece = fc
      .record({
        id: name,
        minutes: minute,
        wait: maybe(minute),
        doneAt: maybe(fc.integer({ min: -50, max: 90 })),
        pinned: maybe(span),
      })
      .map((p) => defined(p));
    const task = fc
      .record({
        id: name,
        pieces: fc.array(piece, { minLength: 1, maxLength: 2 }),
        needs: fc.array(fc.record({ resource: name, units: few }), { maxLength: 2 }),
        calendars: fc.array(name, { maxLength: 2 }),
        after: fc.array(fc.record({ task: name, wait: minute }), { maxLength: 1 }),
        release: maybe(minute),
        deadline: maybe(minute),
      })
      .map((t) => defined(t));
    const resource = fc
      .record({ id: name, units: few, there: maybe(fc.array(span, { maxLength: 2 })) })
      .map((r) => defined(r));
    const spec = fc.record({
      horizon: fc.constantFrom(600, 600, 600, 7),
      step: fc.constantFrom(5, 5, 1),
      resources: fc.array(resource, { minLength: 2, maxLength: 3 }),
      calendars: fc.array(fc.record({ id: name, shut: fc.array(span, { maxLength: 1 }) }), {
        minLength: 2,
        maxLength: 3,
      }),
      tasks: fc.array(task, { minLength: 1, maxLength: 3 }),
    });
    const letter = (i: number) => 'abc'[i] ?? 'd';
    const named = <T extends object>(list: readonly T[]) => list.map((x, i) => ({ ...x, id: letter(i) }));
    let planned = 0;
    fc.assert(
      fc.property(spec, fc.boolean(), fc.nat(40), spoilt, (any, tidy, where, bad) => {
        const known = (id: string, count: number) => 'abc'.indexOf(id) < count;
        const tasks = named(any.tasks).map((t, i) => ({
          ...t,
          pieces: named(t.pieces),
          after: t.after.filter((a) => known(a.task, i)),
          needs: t.needs.filter((n) => known(n.resource, any.resources.length)),
          calendars: t.calendars.filter((c) => known(c, any.calendars.length)),
        }));
        const [resources, calendars] = [named(any.resources), named(any.calendars)];
        // A number somewhere in it is spoilt in half of the cases.
        let at = 0;
        const spoil = (_key: string, v: unknown) => (typeof v === 'number' && at++ === where ? `${bad}` : v);
        const whole = (tidy ? { ...any, tasks, resources, calendars } : any) as WorkSpec;
        const numbers = (_key: string, v: unknown) => (v === `${bad}` ? bad : v);
        const x: WorkSpec = tidy ? whole : JSON.parse(JSON.stringify(whole, spoil), numbers);
        const { plan, problems } = planWork(x);
        expect(plan !== undefined || problems.length > 0).toBe(true);
        if (plan) expect(checkPlan(x, plan.pieces)).toEqual([]);
        if ((plan?.pieces.length ?? 0) > 1) planned++;
      }),
      { seed: 11, numRuns: 2000 },
    );
    expect(planned).toBeGreaterThan(200);
  });
});

describe('replanning', () => {
  const tasks = ['a', 'b', 'c', 'd', 'e', 'f'].map((id) => one({ id }));
  const people = { resources: [{ id: 'people', units: 1 }] };

  it('leaves what it can where it was', () => {
    const before = [...tasks].reverse().map(({ id }, i) => ({ task: id, piece: 'all', from: 60 * i }));
    const plan = planned(work(tasks, people), { before });
    expect(plan.moved).toBe(0);
    expect(plan.end).toBe(360);
  });

  it('after one that took longer moves no more than it must', () => {
    const before = tasks.map(({ id }, i) => ({ task: id, piece: 'all', from: i < 3 ? 60 * i : 60 * i + 60 }));
    const late: WorkTask = { ...one({ id: 'a' }), pieces: [{ id: 'all', minutes: 60, doneAt: 120 }] };
    const plan = planned(work([late, ...tasks.slice(1)], { ...people, now: 120 }), { before });
    // b and c have to go; d, e and f stand where they stood.
    expect(by(plan, 'from')).toMatchObject({ d: 240, e: 300, f: 360 });
    expect(plan.moved).toBe(2);
    expect(plan.end).toBe(420);
  });

  it('keeps pinned and ticked pieces, and plans nothing before now', () => {
    const pinned: WorkTask = {
      ...one({ id: 'b' }),
      pieces: [{ id: 'all', minutes: 60, pinned: { from: 200, to: 260 } }],
    };
    const done: WorkTask = { ...one({ id: 'a' }), pieces: [{ id: 'all', minutes: 60, doneAt: -30 }] };
    const after = one({ id: 'c', after: [{ task: 'a', wait: 200 }] });
    const plan = planned(work([done, pinned, after, one({ id: 'd' })], { ...people, now: 100 }));
    expect(by(plan, 'from')).toEqual({ b: 200, c: 260, d: 100 });
  });
});

it('finds the first end that is not refuted in few steps, wherever it lies', () => {
  for (const [from, horizon, truth] of [
    [0, 100, 0],
    [3, 100, 4],
    [0, 8000, 7317],
    [10, 20, 21],
    [21, 20, 21],
  ] as const) {
    let asked = 0;
    const found = firstLeft(from, horizon, (by) => {
      asked++;
      expect(by >= from && by <= horizon).toBe(true);
      return by < truth;
    });
    expect(found).toBe(truth);
    // Doubling and halving: twice the binary logarithm of the way.
    expect(asked).toBeLessThanOrEqual(2 * Math.ceil(Math.log2(horizon + 2)) + 2);
  }
});

describe('work that would be left for other work', () => {
  const people = (id: string, pieces: number, rest: Partial<WorkTask> = {}): WorkTask => ({
    id,
    pieces: Array.from({ length: pieces }, (_, k) => ({ id: `${k}`, minutes: 30 })),
    needs: [{ resource: 'people', units: 1 }],
    ...rest,
  });
  const leaves = (plan: ReturnType<typeof planned>) =>
    plan.pieces.filter((p, i) => plan.pieces[i - 1]?.task !== p.task).length -
    new Set(plan.pieces.map((p) => p.task)).size;
  const alone = { resources: [{ id: 'people', units: 1 }] };

  it('is gone on with where all is done as soon', () => {
    const plan = planned(work([people('A', 4), people('B', 3), people('C', 2)], alone));
    expect(plan.end).toBe(9 * 30);
    expect(leaves(plan)).toBe(0);
  });

  it('is left where a deadline or a delivery asks for it', () => {
    const plan = planned(
      work([people('A', 4, { deadline: 150 }), people('B', 1, { deadline: 60, release: 30 })], alone),
    );
    expect(plan.late).toEqual([]);
    expect(leaves(plan)).toBe(1);
  });
});
