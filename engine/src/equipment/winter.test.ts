import { describe, expect, it } from 'vitest';
import { demo, demoNames } from '../../test/demos.ts';
import { evaluate } from '../index.ts';

const sum = (numbers: readonly number[]): number => numbers.reduce((a, b) => a + b, 0);

describe.each(demoNames)('the winter of the units of %s', (name) => {
  const units = Object.values(evaluate(demo(name), {}).plan.trades.equipment?.candidates ?? {});

  it('holds every heating hour once, and those with help as they are counted elsewhere', () => {
    const known = units.flatMap((u) => (u.winter.ok && u.heatingHours.ok && u.helpedHours.ok ? [u] : []));
    expect(known.length).toBeGreaterThan(0);
    for (const { winter, heatingHours, helpedHours } of known) {
      if (!winter.ok || !heatingHours.ok || !helpedHours.ok) continue;
      const { bins, width } = winter.value;
      expect(sum(bins.map((b) => b.holding + b.stopStart + b.helped + b.beyond))).toBeCloseTo(heatingHours.value, 6);
      expect(sum(bins.map((b) => b.helped))).toBeCloseTo(helpedHours.value.low, 6);
      expect(sum(bins.map((b) => b.helped + b.beyond))).toBeCloseTo(helpedHours.value.high, 6);
      for (const [i, b] of bins.entries())
        if (i > 0) expect(b.from).toBeGreaterThanOrEqual((bins[i - 1]?.from ?? 0) + width);
    }
  });

  it('stops and starts in the warm bins and is helped in the cold ones, never the other way round', () => {
    for (const { winter } of units) {
      if (!winter.ok) continue;
      const warmestHelped = Math.max(...winter.value.bins.filter((b) => b.helped > 0).map((b) => b.from), -99);
      const coldestStopping = Math.min(...winter.value.bins.filter((b) => b.stopStart > 0).map((b) => b.from), 99);
      expect(warmestHelped).toBeLessThan(coldestStopping);
    }
  });
});
