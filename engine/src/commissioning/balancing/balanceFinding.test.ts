import type { Project } from '@kneewall/project';
import { describe, expect, it } from 'vitest';
import { demo } from '../../../test/demos.ts';
import { coldMemo, evaluate, runJob } from '../../index.ts';
import type { Plan } from '../../plan/plan.ts';
import { balancingKind } from './balancingJob.ts';

const is = (value: number) => ({ value, known: 'measured' as const });
const host = { blob: () => undefined, tell: () => undefined };
const [whole, memo] = [demo('juniper-flat'), coldMemo()];
const known: Record<string, unknown> = {};
const kinds = new Set(['air/balance', balancingKind]);

type Readings = NonNullable<Project['readings']>;
type Visits = NonNullable<Project['visits']>;

function planOf(readings: Readings, visit: Visits[string] = {}): Plan {
  const first: Visits[string] = { name: 'First start', mode: 'heating', outdoor: is(0), returnAir: is(20), ...visit };
  const project: Project = { ...whole, visits: { first }, readings };
  for (let round = 0; round < 2; round++)
    for (const job of evaluate(project, known, { memo }).wanted)
      if (kinds.has(job.kind)) known[job.key] ??= runJob(job, host);
  return evaluate(project, known, { memo }).plan;
}

const drawn = planOf({});
const model = drawn.trades.air?.model;
const supplies = new Set(model?.ok ? model.value.sections.flatMap((x) => (x.side === 'supply' ? [x.id] : [])) : []);
const registers = model?.ok ? model.value.terminals.filter((t) => supplies.has(t.section)) : [];
const flows = drawn.trades.air?.flows;
const flowOf = (id: string): number => (flows?.ok ? (flows.value.terminals[id] ?? 0) : 0);

const readingsOf = (ids: readonly string[], repeats: number): Readings =>
  Object.fromEntries(
    ids.map((id) => [
      `r-${id}`,
      {
        visit: 'first',
        expected: `air/flow:${id}`,
        means: 'bag' as const,
        value: is(flowOf(id)),
        repeats: is(repeats),
      },
    ]),
  );
const all = registers.map((t) => t.id);
const balanceOf = (plan: Plan) => plan.findings.find((f) => f.id === 'commissioning/balance:first');

describe('balancing from the readings of a visit', () => {
  it('says nothing before two registers are read, and names those that lack', () => {
    expect(balanceOf(planOf(readingsOf(all.slice(0, 1), 9)))).toBeUndefined();
    const part = balanceOf(planOf(readingsOf(all.slice(1), 9)));
    expect(part).toMatchObject({ status: 'unknown', because: 'missing' });
    expect(part?.what).toContain(registers[0]?.name);
  });

  it('cannot tell from one bag reading each, and says how many it takes', () => {
    const once = balanceOf(planOf(readingsOf(all, 1)));
    expect(once).toMatchObject({ status: 'unknown', because: 'missing' });
    expect(once?.mend).toMatch(/9 times/);
  });

  it('finds runs as drawn where flows are as drawn, and names the dampers to move', () => {
    const plan = planOf(readingsOf(all, 9));
    const found = plan.trades.commissioning?.visits.first?.balancing?.found;
    if (!found?.ok) throw new Error(`assert: told, not ${found?.because}`);
    for (const run of found.value.runs) expect(Math.abs(Math.log(run.factor))).toBeLessThan(0.1);
    const finding = balanceOf(plan);
    expect(finding?.status).toBe(found.value.word === 'good' ? 'ok' : 'fails');
    for (const m of found.value.moves) expect(finding?.mend).toContain(m.name);
    const work = plan.tasks.filter((t) => /^commissioning\/(move-dampers|read-balanced)/.test(t.id));
    const trips = work.filter((t) => t.id.includes('move-dampers'));
    expect(trips.length).toBeGreaterThan(0);
    // Every damper in one trip, the attic's in one; its parts are where one stands; reading comes after all.
    expect(trips.length).toBeLessThanOrEqual(2);
    for (const m of found.value.moves)
      expect(trips.filter((t) => t.what.includes(m.name) && (t.place === 'attic') === m.inAttic)).toHaveLength(1);
    expect(work.filter((t) => t.id.endsWith('read-balanced')).map((t) => t.after)).toEqual(
      found.value.moves.length > 0 ? [trips.map((t) => t.id)] : [],
    );
  });

  it('sets readings aside that were taken with doors shut', () => {
    expect(balanceOf(planOf(readingsOf(all, 9), { doors: 'shut' }))).toBeUndefined();
  });

  it('takes a damper as it was noted', () => {
    const section = model?.ok ? model.value.terminals.find((t) => t.id === all[0])?.section : undefined;
    const noted = planOf(readingsOf(all, 9), { dampers: { one: { section: section ?? '', turned: is(30) } } });
    expect(noted.trades.commissioning?.visits.first?.dampers).toEqual({ [section ?? '']: 30 });
    const found = noted.trades.commissioning?.visits.first?.balancing?.found;
    if (!found?.ok) throw new Error('assert: told');
    // It gives as much as open, though turned: so its run resists less than drawn.
    expect(found.value.runs.find((r) => r.place === section)?.factor ?? 0.5).toBeLessThan(0.9);
  });
});
