import { describe, expect, it } from 'vitest';
import { integerProgramme, loadSolver } from '../../../test/sizing/integerProgramme.ts';
import { randomSpec } from '../../../test/sizing/randomTree.ts';
import { solveSizing } from './solveSizing.ts';
import type { SizingSpec } from './spec.ts';

/** Losses of whole pascals, so that the library's tolerance decides nothing. */
const system = (seed: number, sections: number): SizingSpec => {
  const spec = randomSpec(seed, { sections, options: 6, coarse: true });
  const budget = Math.floor(spec.budget);
  return { ...spec, goal: spec.goal === 'static' ? 'money' : spec.goal, budget };
};

describe('the fronts against a general integer-programming library', () => {
  it('find the same least cost on 120 systems of up to 30 sections', async () => {
    const highs = await loadSolver();
    const seen = { fits: 0, nothing: 0 };
    for (let seed = 1; seed <= 120; seed++) {
      const spec = system(seed, 6 + (seed % 25));
      const least = integerProgramme(highs, spec);
      const sizing = solveSizing(spec);
      if (sizing.status === 'nothing-fits') {
        seen.nothing++;
        expect(least, `seed ${seed}`).toBeUndefined();
        continue;
      }
      seen.fits++;
      expect(sizing.proof.kind).toBe('proved');
      const { money, labour } = sizing.best.totals;
      expect(Math.round(spec.goal === 'labour' ? labour : money * 100), `seed ${seed}`).toBe(least);
    }
    expect(Math.min(seen.fits, seen.nothing)).toBeGreaterThan(10);
  });
});
