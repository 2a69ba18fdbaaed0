import { describe, expect, it } from 'vitest';
import { demo } from '../../test/demos.ts';
import { evaluate } from '../index.ts';

describe.each(['tern-ledge', 'juniper-flat'] as const)('the curves of %s', (name) => {
  const air = evaluate(demo(name), {}).plan.trades.air;
  if (!air?.curves.ok || !air.model.ok || !air.flows.ok) throw new Error('the demo has ducts and a unit');
  const { blower, rows, system, operating } = air.curves.value;

  it('meet where the blower runs', () => {
    expect(operating.flow).toBe(air.flows.ok && air.flows.value.flow);
    const i = blower.findIndex((p) => p.flow > operating.flow);
    const [a, b] = [blower[i - 1], blower[i]];
    if (!a || !b) throw new Error('the operating point lies within the table');
    const share = (operating.flow - a.flow) / (b.flow - a.flow);
    expect(a.pressure + share * (b.pressure - a.pressure)).toBeCloseTo(operating.pressure, 0);
  });

  it('pass through the rows of the table, in the air of this place', () => {
    const points = air.model.ok ? air.model.value.blower.points : [];
    expect(rows.map((r) => r.flow)).toEqual(points.map((p) => p.flow));
    // A blower at one speed gives pressure with the density of its air (fan laws).
    const ratios = rows.map((r, i) => r.pressure / (points[i]?.pressure ?? 1));
    for (const ratio of ratios) expect(ratio).toBeCloseTo(ratios[0] ?? 0, 3);
  });

  it('rise with the flow, by a power between that of a filter and that of an opening', () => {
    const above = system.filter((p) => p.flow > 0);
    expect(above.length).toBeGreaterThan(4);
    for (const [i, b] of above.entries()) {
      const a = above[i - 1];
      if (!a) continue;
      const power = Math.log(b.pressure / a.pressure) / Math.log(b.flow / a.flow);
      expect(power).toBeGreaterThan(1.3);
      expect(power).toBeLessThan(2.02);
    }
  });
});
