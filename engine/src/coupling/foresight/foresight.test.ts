import { demos } from '@kneewall/demos';
import type { Project, Range } from '@kneewall/project';
import loadHighs from 'highs';
import { beforeAll, describe, expect, it } from 'vitest';
import {
  type ControlWay,
  evaluate,
  type Foresight,
  highsSolver,
  type Job,
  JobRefused,
  type Outcome,
  runJob,
} from '../../index.ts';
import type { PowerYearInputs } from '../power/powerYearJob.ts';

let project: Project;
let job: Job;
let found: Outcome<Foresight>;
let year: Foresight;
const told: number[] = [];
const way = (id: ControlWay['id']): ControlWay => year.ways.find((w) => w.id === id) as ControlWay;

beforeAll(async () => {
  project = (await demos.find((d) => d.id === 'tern-ledge')?.load()) as Project;
  const wanted = evaluate(project, {}).wanted.find((j) => j.kind === 'coupling/foresight');
  if (!wanted) throw new Error('foresight is offered');
  job = wanted;
  const solver = highsSolver(await loadHighs());
  const inputs = { ...(job.inputs as PowerYearInputs), step: 3600 };
  const tell = (done: number, total: number): void => void told.push(done / total);
  found = runJob({ ...job, inputs }, { blob: () => undefined, tell, solver }) as Outcome<Foresight>;
  if (!found.ok) throw new Error(`not found: ${found.because}`);
  year = found.value;
}, 400_000);

describe('a year on own power with the whole year known', () => {
  it('is asked for by a person, and refused in words where there is no solver', () => {
    expect(job.cost).toBe('long');
    expect(() => runJob(job, { blob: () => undefined, tell: () => {} })).toThrow(JobRefused);
  });

  it('is proved, and burns less than any rule in house and power themselves', () => {
    expect(year.certificate.holds).toBe(true);
    expect(year.certificate.gap).toBeLessThan(1e-6);
    for (const id of ['as-set', 'cooler', 'rule', 'rule-like-today'] as const) {
      expect(way(id).litres, id).toBeGreaterThan(way('timing').litres);
      expect(way(id).litres, id).toBeGreaterThan(way('best').litres);
    }
    expect(way('best').litres).toBeLessThan(way('timing').litres);
    expect([way('best').cold, way('best').short].every((x) => x < 1e-6)).toBe(true);
  });

  it('leaves a simple rule part of what could be saved, more than a cooler house alone', () => {
    expect(way('rule').litres).toBeLessThan(way('cooler').litres);
    expect(way('rule-like-today').litres).toBeLessThan(way('as-set').litres);
    expect(way('rule').cold).toBeLessThan(20);
  });

  it('tells how far it is, never backwards', () => {
    expect(told.length).toBeGreaterThan(100);
    expect(told.every((x, i) => x >= (told[i - 1] ?? 0) && x <= 1)).toBe(true);
  });

  it('is told in words, with the rule', () => {
    const { plan } = evaluate(project, { [job.key]: found });
    const told = plan.findings.find((f) => f.id === 'offgrid/smarter-control');
    expect(told?.status).not.toBe('unknown');
    expect(plan.workings[told?.working ?? '']?.at(-1)?.value).toBe((told?.value as Range | undefined)?.likely);
    expect(`${told?.what} ${told?.why} ${told?.mend}`).not.toMatch(/NaN|undefined|Infinity/);
  });
});
