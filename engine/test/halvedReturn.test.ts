import { applyEdit, type Project, valueAt } from '@kneewall/project';
import { describe, expect, it } from 'vitest';
import { evaluate } from '../src/index.ts';
import { required } from '../src/plan/outcome.ts';
import { demo } from './demos.ts';

const path = ['routes', 'ducts', 'sections', 'return-hall', 'diameter'];

describe('a return half as wide', () => {
  it('changes pressure, flow, what the unit gives and what is said of them together', () => {
    const project = demo('tern-ledge');
    const before = valueAt(project, path) as { value: number };
    const after = { value: before.value / 2, known: 'measured' };
    const { value: halved, problems } = applyEdit(project, { device: 'test', seq: 1, path, before, after });
    expect(problems).toEqual([]);
    const [wide, thin] = [evaluate(project, {}).plan, evaluate(halved as Project, {}).plan];
    const flow = (plan: typeof wide): number => plan.agreement.heating?.flow ?? Number.NaN;
    expect(thin.agreement.converged).toBe(true);
    // Nine inches to four and a half: a good twentieth of the passage by the fifth power of the width.
    expect(flow(thin)).toBeLessThan(0.6 * flow(wide));
    const pressure = (plan: typeof wide): number =>
      required(plan.trades.air?.staticPressure ?? { ok: false, because: 'missing', paths: [] }).likely;
    expect(pressure(thin)).toBeGreaterThan(pressure(wide));
    // Less air, more heat to the attic from each part of it: less reaches the rooms, and the air leaves hotter.
    expect(thin.agreement.heating?.delivered ?? 0).toBeLessThan(wide.agreement.heating?.delivered ?? 0);
    expect(thin.agreement.heating?.leaving ?? 0).toBeGreaterThan((wide.agreement.heating?.leaving ?? 0) + 10);
    const said = (plan: typeof wide, id: string): string => plan.findings.find((f) => f.id === id)?.what ?? '';
    for (const id of ['air/static-pressure', 'air/total-flow', 'air/return-path', 'air/rooms-held'])
      expect(said(thin, id)).not.toBe(said(wide, id));
    expect(thin.findings.find((f) => f.id === 'air/return-path')?.status).toBe('fails');
  });
});
