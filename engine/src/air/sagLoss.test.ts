import { applyEdit, valueAt } from '@kneewall/project';
import { describe, expect, it } from 'vitest';
import { demo } from '../../test/demos.ts';
import { evaluate } from '../index.ts';
import { fittingLoss, sagTurn } from '../physics/flow/index.ts';
import { scenario } from '../plan/scenario.ts';
import { sagLoss } from './sagLoss.ts';

const bend = (angle: number): number => {
  const found = fittingLoss('bend-flexible', { angle });
  if (!found.ok) throw new Error('the table covers it');
  return found.value;
};

describe('sag of flexible duct', () => {
  it('turns as a hanging parabola does at its ends (closed form)', () => {
    // Half an inch in a foot: slope 4/24 at each hanger.
    expect(sagTurn(1, 24)).toBeCloseTo(2 * 9.4623, 3);
    expect(sagTurn(0, 1.2)).toBe(0);
    expect(sagTurn(0.1, 1.2)).toBeCloseTo(sagTurn(0.2, 2.4), 12);
  });

  it('loses one bend of that turn for each span, half to two of them by care of hanging', () => {
    const [sag, span, length] = [0.05, 1.2, 6];
    const of = (end?: 'low' | 'high') =>
      sagLoss('x', sag, span, length, scenario(end ? { path: 'x.sag', end } : undefined));
    expect(of()).toBeCloseTo((length / span) * bend(sagTurn(sag, span)), 12);
    expect(of('low')).toBeCloseTo(of() / 2, 12);
    expect(of('high')).toBeCloseTo(2 * of(), 12);
    expect(sagLoss('x', 0, span, length, scenario())).toBe(0);
  });

  it('costs the most where the rule for hanging is broken most, and air of the whole house', () => {
    const project = demo('tern-ledge');
    const id = Object.entries(project.routes?.ducts?.sections ?? {}).find(([, x]) => x.sag)?.[0] ?? '';
    const path = ['routes', 'ducts', 'sections', id, 'sag'];
    const flow = (sag: number | undefined): number => {
      const after = sag === undefined ? undefined : { value: sag, known: 'measured' };
      const { value } = applyEdit(project, { device: 'test', seq: 1, path, before: valueAt(project, path), after });
      const { air } = evaluate(value, {}).plan.trades;
      return air?.flows.ok ? (air.flows.value.sections[id] ?? 0) : Number.NaN;
    };
    expect(flow(0.05)).toBeLessThan(flow(undefined));
    expect(flow(0.2)).toBeLessThan(flow(0.05));
  });
});
