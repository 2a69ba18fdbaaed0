import { monthNames, type Project, type Range } from '@kneewall/project';
import { describe, expect, it } from 'vitest';
import { demo, demoNames } from '../../test/demos.ts';
import type { HouseYear } from '../coupling/houseYear/answers.ts';
import { evaluate, type Finding, runJob } from '../index.ts';

const is = (value: number) => ({ value, known: 'measured' as const });
const ternWith = (house: object): Project => {
  const project = demo('tern-ledge');
  return { ...project, house: { ...project.house, ...house } } as Project;
};
const found = (project: Project): Finding | undefined =>
  evaluate(project, {}, { units: 'si' }).plan.findings.find((f) => f.id === 'loads/damp-attic');
const range = (project: Project): Range => found(project)?.value as Range;

describe('the air at the roof deck', () => {
  it('is told as a range over the leak through the ceiling, in the month that is worst', () => {
    const f = found(ternWith({}));
    const { low, likely, high } = range(ternWith({}));
    expect(low).toBeLessThan(likely);
    expect(likely).toBeLessThan(high);
    expect(high).toBeLessThanOrEqual(1);
    expect(f?.what).toMatch(/December|January|February/);
    expect(f?.what).toContain('10% of the leaking air');
  });

  it('gets drier with a tighter house and with more vents, and damper in a sealed attic', () => {
    const usual = range(ternWith({}));
    expect(range(ternWith({ airtightness: is(2) })).likely).toBeLessThan(usual.likely);
    expect(range(ternWith({ roof: { ...demo('tern-ledge').house?.roof, airChanges: is(8) } })).high).toBeLessThan(
      usual.high,
    );
    expect(range(ternWith({ attic: 'sealed' })).likely).toBeGreaterThan(usual.likely);
  });

  it('in a house that leaks nothing is outdoor air, warmed and cooled by sun and sky alone', () => {
    const tight = range(ternWith({ airtightness: is(1e-9) }));
    expect(tight.high - tight.low).toBeLessThan(1e-6);
  });

  it('is frost where a leaky house meets a sealed attic, and never above saturation', () => {
    expect(range(ternWith({ attic: 'sealed', airtightness: is(30) })).high).toBe(1);
  });

  it.each(demoNames)('has the month’s mean attic of %s that the hourly balance of its walls has, to 1 K', (id) => {
    const { plan, wanted } = evaluate(demo(id), {});
    const working = plan.workings['loads/damp-attic'] ?? [];
    const what = plan.findings.find((f) => f.id === 'loads/damp-attic')?.what ?? '';
    const month = monthNames.findIndex((name) => what.includes(name));
    const steady = working.find((step) => step.symbol === 't_attic')?.value ?? Number.NaN;
    const job = wanted.find((j) => j.kind === 'loads/year');
    if (!job) throw new Error('a year is wanted');
    const inputs = { ...(job.inputs as object), step: 3600 };
    const { attic } = runJob({ ...job, inputs }, { blob: () => undefined, tell: () => {} }) as HouseYear;
    const hours = attic?.[month] ?? [];
    expect(Math.abs(hours.reduce((a, b) => a + b, 0) / 24 - steady)).toBeLessThan(1);
  });

  it('is not asked of a house without an attic', () => {
    const { surfaces } = ternWith({}).house ?? {};
    const without = Object.fromEntries(Object.entries(surfaces ?? {}).filter(([, x]) => x.other !== 'attic'));
    expect(found(ternWith({ attic: 'none', surfaces: without }))).toBeUndefined();
  });
});
