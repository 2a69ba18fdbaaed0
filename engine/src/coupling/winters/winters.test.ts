import { demos } from '@kneewall/demos';
import type { Project } from '@kneewall/project';
import { beforeAll, describe, expect, it } from 'vitest';
import { winterMaker } from '../../climate/winters/winterYear.ts';
import { evaluate, type Job, runJob, splitOf } from '../../index.ts';
import { generatorYear } from '../power/generatorYear.ts';
import { powerRuns } from '../power/powerRun.ts';
import { runInTime } from './runInTime.ts';
import { multiples, replayedHours } from './sizesGrid.ts';
import { tenthOf, type Winters } from './wintersAnswers.ts';
import type { WintersInputs } from './wintersJob.ts';

const host = { blob: () => undefined, tell: () => {} };
const loadProject = async (id: string): Promise<Project> => (await demos.find((d) => d.id === id)?.load()) as Project;
let job: Job;
let few: Job;
let found: Winters;

beforeAll(async () => {
  const wanted = evaluate(await loadProject('tern-ledge'), {}).wanted.find((j) => j.kind === 'coupling/winters');
  if (!wanted) throw new Error('the winters are wanted');
  job = wanted;
  // Without the stove of the demo, which keeps the house warm without the engine.
  const { power, ...rest } = job.inputs as WintersInputs;
  const { stove: _stove, ...bare } = power;
  few = { ...job, inputs: { ...rest, power: bare, count: 3 } };
  found = runJob(few, host) as Winters;
});

describe('many winters on own power', () => {
  it('are twenty, and a long job', () => {
    expect((job.inputs as WintersInputs).count).toBe(20);
    expect(job.cost).toBe('long');
  });

  it('come out the same in pieces as in one go', () => {
    const split = splitOf(few);
    if (!split) throw new Error('winters can be split');
    expect(split.count).toBe(3);
    const told: number[] = [];
    const rows = [...split.rows(2, 3, (n) => told.push(n))];
    expect(told).toEqual([1]);
    expect(split.answers([...split.rows(0, 2, () => {}), ...rows])).toEqual(found);
  });

  it('close in energy, differ, and are worse without the engine', () => {
    for (const w of found.winters) {
      expect(w.residual).toBeLessThan(1e-9);
      expect(w.aloneCold).toBeGreaterThanOrEqual(w.cold);
      expect(w.survivedDark).toBeLessThanOrEqual(w.longestDark);
    }
    expect(new Set(found.winters.map((w) => w.generatorHours)).size).toBe(3);
  });

  it('ask less of the generator with more panels, and replayed at their own size what the full loop does', () => {
    for (const row of found.sizes.median) expect(row.at(-1) ?? 0).toBeLessThanOrEqual(row[0] ?? 0);
    // Where nothing holds the unit back, control does not depend on the power: replay and full loop are the same.
    const inputs = job.inputs as WintersInputs;
    const plenty: WintersInputs = {
      ...inputs,
      power: {
        ...inputs.power,
        inverter: { ...inputs.power.inverter, most: 20_000 },
        battery: { ...inputs.power.battery, place: 'heated', chargeMost: 28_000, dischargeMost: 28_000 },
        generator: { rated: 30_000, fuel: 'diesel', startBelow: 0.25, stopAbove: 0.8, least: 0.3 },
      },
    };
    const maker = winterMaker(plenty.winters);
    const { run } = powerRuns(plenty, maker.year(0), { span: maker });
    const demand = runInTime(
      run('unlimited', () => {}),
      maker,
    );
    const full = runInTime(
      run('with-generator', () => {}),
      maker,
    );
    expect(full.record.held.reduce((a, b) => a + b, 0)).toBe(0);
    const generator = plenty.power.generator;
    const hours = generator ? generatorYear(generator, full).hours : Number.NaN;
    const own = multiples.indexOf(1);
    const replayed = replayedHours(plenty.power, demand)[own * multiples.length + own] ?? Number.NaN;
    expect(hours).toBeGreaterThan(50);
    // They begin the winter from other charges: a day of the generator at most.
    expect(Math.abs(replayed - hours)).toBeLessThanOrEqual(12);
  });

  it('are counted as people say it: the middle, and what two of twenty reach', () => {
    const twenty = Array.from({ length: 20 }, (_, i) => ((i * 7) % 20) + 1);
    expect(tenthOf(twenty)).toEqual({ median: 10.5, oneInTen: 19 });
    expect(tenthOf(twenty, true)).toEqual({ median: 10.5, oneInTen: 2 });
  });
});

describe('findings of many winters', () => {
  it('read in so many of so many winters, are pending until they are asked for, and none on the grid', async () => {
    const ids = ['winters-heat', 'winters-alone', 'winters-fuel', 'winters-mornings'].map((id) => `offgrid/${id}`);
    const before = evaluate(await loadProject('tern-ledge'), {}).plan.findings.filter((f) => ids.includes(f.id));
    expect(before.map((f) => f.because)).toEqual(ids.map(() => 'pending'));
    const { plan } = evaluate(await loadProject('tern-ledge'), { [job.key]: found });
    for (const id of ids) {
      const f = plan.findings.find((x) => x.id === id);
      expect(f?.value, id).toBe(plan.workings[f?.working ?? '']?.at(-1)?.value);
      expect(`${f?.what} ${f?.why} ${f?.mend}`).not.toMatch(/NaN|undefined|Infinity/);
    }
    expect(plan.findings.find((f) => f.id === 'offgrid/winters-alone')?.what).toMatch(/in 3 of 3 winters/);
    const grid = evaluate(await loadProject('juniper-flat'), {});
    expect(grid.wanted.filter((j) => j.kind === 'coupling/winters')).toEqual([]);
  });
});
