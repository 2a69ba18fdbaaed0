import type { Project } from '@kneewall/project';
import { beforeAll, describe, expect, it } from 'vitest';
import { demo } from '../../test/demos.ts';
import { evaluate, type Plan } from '../index.ts';
import { required } from '../plan/outcome.ts';

const is = (value: number) => ({ value, known: 'measured' });
type Sections = Record<string, { side: { value: string }; place: unknown; leakage: unknown }>;

function withDucts(change: (sections: Sections) => void): Plan {
  const project = structuredClone(demo('juniper-flat'));
  change(project.routes?.ducts?.sections as unknown as Sections);
  return evaluate(project as Project, {}).plan;
}
const spareOf = (plan: Plan, id: string): number => {
  const value = plan.findings.find((f) => f.id === id)?.value;
  return typeof value === 'object' ? value.likely : Number.NaN;
};
const stepOf = (plan: Plan, id: string, symbol: string): number =>
  plan.workings[`air/${id}`]?.find((s) => s.symbol === symbol)?.value ?? Number.NaN;

describe('what reaches the rooms', () => {
  let drawn: Plan;
  let inside: Plan;
  beforeAll(() => {
    drawn = withDucts(() => {});
    inside = withDucts((sections) => {
      for (const x of Object.values(sections)) Object.assign(x, { place: 'inside', leakage: is(0) });
    });
  });

  it('is on the hot afternoon what the unit gives, where ducts lie inside and do not leak', () => {
    const { cooling } = inside.agreement;
    const load = required(inside.trades.loads?.cooling ?? { ok: false, because: 'missing', paths: [] }).sensible.likely;
    expect(spareOf(inside, 'air/rooms-cooled')).toBeCloseTo((cooling?.sensible ?? 0) - load, 6);
    expect(stepOf(inside, 'rooms-cooled', 'Q_drawn')).toBe(0);
    expect(stepOf(inside, 'duct-heat', 'share')).toBeCloseTo(0, 9);
  });

  it('is less by what a hot attic takes, and the rooms are short of it', () => {
    const finding = drawn.findings.find((f) => f.id === 'air/rooms-cooled');
    expect(finding?.status).toBe('fails');
    expect(spareOf(drawn, 'air/rooms-cooled')).toBeLessThan(spareOf(inside, 'air/rooms-cooled') - 1000);
  });

  it('pays for outdoor air where supply leaks more than return, by the root of the squares of fan and weather', () => {
    // Of the plan: 0.0124 m³/s lost at 0.99 kg/m³ beside 0.0187 m³/s at 1.112 that the weather drives, 34 K:
    // 1006 x (sqrt(0.02074² + 0.01227²) - 0.02074) x 34 = 115 W, by hand.
    expect(stepOf(drawn, 'rooms-held', 'Q_drawn')).toBeGreaterThan(105);
    expect(stepOf(drawn, 'rooms-held', 'Q_drawn')).toBeLessThan(125);
  });
});
