import { describe, expect, it } from 'vitest';
import { everyChoice } from '../../../test/sizing/enumerate.ts';
import { randomSpec } from '../../../test/sizing/randomTree.ts';
import { solveSizing } from './solveSizing.ts';

describe('where the exact way would take too much work', () => {
  it('the choice fits, the bound is below every choice, and the gap between the two is what is said', () => {
    let open = 0;
    for (let seed = 1; seed <= 300; seed++) {
      const spec = { ...randomSpec(seed, { sections: 2 + (seed % 7), options: 4 }), goal: 'money' as const };
      const solved = solveSizing(spec, 0);
      const fit = everyChoice(spec).filter((t) => t.pressure <= Math.round(spec.budget * 1e6));
      expect(solved.status).toBe(fit.length > 0 ? 'fits' : 'nothing-fits');
      if (solved.status !== 'fits') continue;
      const least = Math.min(...fit.map((t) => t.cost));
      const cost = Math.round(solved.best.totals.money * 100);
      expect(solved.best.totals.pressure).toBeLessThanOrEqual(spec.budget + 1e-6);
      if (solved.proof.kind === 'proved') {
        expect(cost).toBe(least);
        continue;
      }
      open++;
      expect(Math.round(solved.proof.bound * 100)).toBeLessThanOrEqual(least);
      expect(cost).toBeGreaterThanOrEqual(least);
      expect(solved.proof.gap).toBeCloseTo((cost - Math.round(solved.proof.bound * 100)) / cost, 12);
    }
    expect(open).toBeGreaterThan(0);
    expect(open).toBeLessThan(60);
  });
});
