import { describe, expect, it } from 'vitest';
import { checkPlan, lowerBounds, planWork, type WorkSpec, type WorkTask } from './index.ts';
import { inspectWork } from './inspectWork.ts';
import { layTasks } from './layTasks.ts';
import { newSearch } from './search/state.ts';
import { planWithin } from './search/within.ts';
import { below, type Seeded, seeded } from './seeded.ts';

const horizon = 16;

/** Four or five pieces with windows, heat, a helper who goes, waits, a delivery: small enough to try everything. */
function randomWork(seed: number): WorkSpec {
  const r: Seeded = seeded(seed);
  const count = 3 + below(r, 2);
  const tasks = Array.from({ length: count }, (_, i): WorkTask => {
    const pieces = Array.from({ length: i === 1 && count < 5 ? 2 : 1 }, (_p, k) => ({
      id: `${k}`,
      minutes: 1 + below(r, 3),
      ...(k > 0 ? { wait: below(r, 3) } : {}),
    }));
    const after = i > 0 && below(r, 2) === 0 ? [{ task: `t${below(r, i)}`, wait: below(r, 3) }] : [];
    return {
      id: `t${i}`,
      pieces,
      needs: [
        { resource: 'people', units: 1 + below(r, 2) },
        { resource: 'attic', units: below(r, 2) },
      ],
      calendars: below(r, 2) === 0 ? ['hours'] : [],
      after,
      ...(below(r, 4) === 0 ? { release: below(r, 6) } : {}),
      ...(below(r, 5) === 0 ? { deadline: 5 + below(r, 9) } : {}),
    };
  });
  const a = 2 + below(r, 4);
  return {
    horizon,
    step: 1,
    resources: [
      { id: 'people', units: 2 + below(r, 2), fewer: [{ from: a, to: a + 3, units: 1 }] },
      { id: 'attic', units: 1 },
    ],
    calendars: [
      {
        id: 'hours',
        open: [
          { from: 0, to: 2 + below(r, 5) },
          { from: 8, to: 16 },
        ],
        heat: [{ from: 9, to: 12, minutesAnHour: [60, 30, 20][below(r, 3)] ?? 60 }],
      },
    ],
    tasks,
  };
}

/** Ends at each start, by walking through the minutes. */
function endFrom(spec: WorkSpec, task: WorkTask, start: number, minutes: number): number | undefined {
  let work = 0;
  for (let t = start; t < horizon; t++) {
    let pace = 60;
    for (const c of spec.calendars) {
      if (!task.calendars?.includes(c.id)) continue;
      if (!c.open?.some((s) => s.from <= t && t < s.to)) return undefined;
      for (const h of c.heat ?? []) if (h.from <= t && t < h.to) pace = Math.min(pace, h.minutesAnHour);
    }
    work += pace;
    if (work >= 60 * minutes) return t + 1;
  }
  return undefined;
}

/** The soonest end of all plans that there are; nothing where there is none. Everything is tried. */
function soonest(spec: WorkSpec): number | undefined {
  type Item = { task: WorkTask; minutes: number; wait: number; chained: boolean; last: boolean };
  const items = spec.tasks.flatMap((task) =>
    task.pieces.map(
      (p, k): Item => ({
        task,
        minutes: p.minutes as number,
        wait: p.wait ?? 0,
        chained: k > 0,
        last: k === task.pieces.length - 1,
      }),
    ),
  );
  const use = spec.resources.map(() => new Array<number>(horizon).fill(0));
  const units = spec.resources.map((r) =>
    Array.from({ length: horizon }, (_, t) =>
      Math.min(r.units, ...(r.fewer ?? []).filter((f) => f.from <= t && t < f.to).map((f) => f.units)),
    ),
  );
  const ends = new Map<string, number>();
  let best: number | undefined;
  const go = (a: number, end: number): void => {
    if (best !== undefined && end >= best) return;
    const item = items[a];
    if (!item) {
      best = end;
      return;
    }
    const { task } = item;
    const before = (task.after ?? []).map((x) => (ends.get(x.task) ?? 0) + (x.wait ?? 0));
    const from = Math.max(task.release ?? 0, ...(item.chained ? [(ends.get(task.id) ?? 0) + item.wait] : before));
    const kept = ends.get(task.id);
    for (let s = from; s < horizon; s++) {
      const to = endFrom(spec, task, s, item.minutes);
      if (to === undefined || (item.last && to > (task.deadline ?? horizon))) continue;
      const add = (sign: number) =>
        task.needs.forEach((n) => {
          const r = spec.resources.findIndex((x) => x.id === n.resource);
          for (let t = s; t < to; t++) use[r]![t]! += sign * n.units;
        });
      add(1);
      if (use.every((row, r) => row.every((x, t) => x <= units[r]![t]! || x === 0))) {
        ends.set(task.id, to);
        go(a + 1, Math.max(end, to));
      }
      add(-1);
    }
    if (kept === undefined) ends.delete(task.id);
    else ends.set(task.id, kept);
  };
  go(0, 0);
  return best;
}

describe('small work with calendars, everything tried', () => {
  it('is planned to the soonest end, or refused where there is no plan', () => {
    let planned = 0;
    for (let seed = 1; seed <= 400; seed++) {
      const spec = randomWork(seed);
      const truth = soonest(spec);
      const { plan, problems } = planWork(spec);
      if (truth === undefined) {
        expect(plan === undefined || plan.late.length > 0, `seed ${seed}`).toBe(true);
        continue;
      }
      planned++;
      expect(problems, `seed ${seed}`).toEqual([]);
      expect(checkPlan(spec, plan?.pieces ?? []), `seed ${seed}`).toEqual([]);
      expect([plan?.end, plan?.bound, plan?.proved], `seed ${seed}`).toEqual([truth, truth, true]);
    }
    expect(planned).toBeGreaterThan(250);
  });

  it('is searched exactly from nothing: no plan a minute sooner, a plan then, each lower bound below', () => {
    let proved = 0;
    for (let seed = 1001; seed <= 1400; seed++) {
      const spec = randomWork(seed);
      const truth = soonest(spec);
      expect(inspectWork(spec)).toEqual([]);
      const x = layTasks(spec);
      if (truth === undefined || 'refused' in x) continue;
      const search = newSearch(x.w, new Int32Array(x.w.n));
      expect(planWithin(search, truth - 1, 1e6).found, `seed ${seed}`).toBe('none');
      expect(planWithin(search, truth, 1e6).found, `seed ${seed}`).toBe('plan');
      expect(Math.max(...Object.values(lowerBounds(x.w))), `seed ${seed}`).toBeLessThanOrEqual(truth);
      proved++;
    }
    expect(proved).toBeGreaterThan(250);
  });
});
