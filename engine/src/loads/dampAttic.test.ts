import type { Project, Range } from '@kneewall/project';
import { describe, expect, it } from 'vitest';
import { demo } from '../../test/demos.ts';
import { evaluate, type Finding } from '../index.ts';

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

  it('is not asked of a house without an attic', () => {
    const { surfaces } = ternWith({}).house ?? {};
    const without = Object.fromEntries(Object.entries(surfaces ?? {}).filter(([, x]) => x.other !== 'attic'));
    expect(found(ternWith({ attic: 'none', surfaces: without }))).toBeUndefined();
  });
});
