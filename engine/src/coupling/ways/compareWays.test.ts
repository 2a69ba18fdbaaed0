import { beforeAll, describe, expect, it } from 'vitest';
import { demo } from '../../../test/demos.ts';
import { evaluate, type Job, runJob, type Way, type Ways } from '../../index.ts';
import type { WaysInputs } from './waysJob.ts';

const host = { blob: () => undefined, tell: () => {} };
const project = demo('tern-ledge');
const before: Record<string, unknown> = {};
let job: Job;
let ways: Ways;
/** Hours instead of quarters are enough here. */
const run = (change: (x: WaysInputs) => WaysInputs): Ways =>
  runJob({ ...job, inputs: change({ ...(job.inputs as WaysInputs), step: 3600 }) }, host) as Ways;
const of = (all: Ways, id: Way['id']): Way => {
  const found = all.ways.find((w) => w.id === id);
  if (!found) throw new Error(`${id} is there`);
  return found;
};

beforeAll(() => {
  // Ways hang on the best sizes of the ducts: those are found first.
  const sizing = evaluate(project, {}).wanted.find((j) => j.kind === 'air/sizing');
  if (sizing) before[sizing.key] = runJob(sizing, host);
  const wanted = evaluate(project, before).wanted.find((j) => j.kind === 'coupling/ways');
  if (!wanted) throw new Error('the ways are wanted');
  job = wanted;
  ways = run((x) => x);
});

describe('where a unit could stand', () => {
  it('gives the rooms all of its heat without ducts, and less the more they lose', () => {
    expect(of(ways, 'rooms').delivered).toBe(1);
    expect(of(ways, 'as-drawn').delivered).toBeLessThan(of(ways, 'wrapped').delivered);
    expect(of(ways, 'wrapped').delivered).toBeLessThan(of(ways, 'buried').delivered);
    expect(of(ways, 'inside').delivered).toBeGreaterThan(of(ways, 'wrapped').delivered);
  });

  it('runs the generator less where less is lost', () => {
    expect(of(ways, 'as-drawn').generator).toBeGreaterThan(0);
    expect(of(ways, 'inside').generator).toBeLessThan(of(ways, 'as-drawn').generator ?? 0);
    expect(of(ways, 'sealed').generator).toBeUndefined();
  });

  it('says of knee walls and room units that they are known by practice alone', () => {
    const knee = of(ways, 'kneewall');
    expect(knee.about?.low).toBe(of(ways, 'inside').electricity);
    expect(knee.about?.high).toBe(of(ways, 'wrapped').electricity);
    const rooms = of(ways, 'rooms');
    expect(rooms.about?.low).toBeLessThan(rooms.electricity);
    expect(rooms.units).toBeGreaterThan(1);
  });

  it('offers no knee wall to a house without one, and tells of no generator on the grid', () => {
    const plain = run((x) => {
      const { power: _power, ...rest } = x;
      const surfaces = x.house.shell.surfaces.filter((f) => !(f.behind === 'attic' && f.part === 'walls'));
      return { ...rest, house: { ...x.house, shell: { ...x.house.shell, surfaces } } };
    });
    expect(plain.ways.some((w) => w.id === 'kneewall')).toBe(false);
    expect(plain.ways.every((w) => w.generator === undefined)).toBe(true);
  });

  it('is a finding at the decision, unknown until the year has been run', () => {
    const found = (results: Record<string, unknown>) =>
      evaluate(project, results).plan.findings.find((f) => f.id === 'air/where-built');
    expect(found({})).toMatchObject({ status: 'unknown', because: 'pending', holdPoint: 'decide' });
    const known = found({ ...before, [job.key]: ways });
    const best = Math.min(
      ...(['wrapped', 'buried', 'inside', 'kneewall', 'rooms'] as const).map((id) => of(ways, id).electricity),
    );
    const { electricity } = of(ways, 'as-drawn');
    expect(known?.value).toMatchObject({ likely: (electricity - best) / electricity });
    expect(known?.what).toMatch(/of the generator/);
    expect(known?.caution).toMatch(/asbestos/);
  });
});
