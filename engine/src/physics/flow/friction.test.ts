import { describe, expect, it } from 'vitest';
import { evaluateFormula } from '../formula.ts';
import { colebrookResidual, frictionFactor, frictionGrowth, straightDrop } from './index.ts';

const air = { density: 1.204, viscosity: 1.825e-5 };
const run = { length: 10, diameter: 0.2, area: Math.PI * 0.01, roughness: 0.0009 };

describe('friction', () => {
  it('satisfies its own equation wherever it is turbulent', () => {
    for (let e = 3.61; e < 9; e += 0.13)
      for (const rr of [0, 1e-5, 1e-3, 0.05])
        expect(Math.abs(colebrookResidual(frictionFactor(10 ** e, rr), 10 ** e, rr))).toBeLessThan(1e-11);
  });

  it('rises steadily in pressure with flow, through the transition too', () => {
    let before = 0;
    for (let q = 1e-5; q < 0.3; q *= 1.01) {
      const now = straightDrop(run, q, air);
      expect(now).toBeGreaterThan(before);
      before = now;
    }
  });

  it('grows with Reynolds number as its closed slope says (against a numeric derivative)', () => {
    for (const re of [500, 3000, 5000, 4e4, 1e6])
      for (const rr of [0, 1e-3, 0.02]) {
        const [f, up, down] = [re, re * 1.0001, re / 1.0001].map((r) => frictionFactor(r, rr));
        const numeric = (Math.log(up ?? 1) - Math.log(down ?? 1)) / (2 * Math.log(1.0001));
        expect(frictionGrowth(f ?? 1, re, rr)).toBeCloseTo(numeric, 5);
      }
  });

  it('writes down the very calculation it made', () => {
    const steps: { formula: string; inputs: Readonly<Record<string, number>>; value: number }[] = [];
    const drop = straightDrop(run, 0.1, air, 3, {
      step: (_s, formula, inputs, value) => steps.push({ formula, inputs, value }),
    });
    const shown = steps.filter((s) => s.formula !== 'solved');
    expect(shown.length).toBe(3);
    for (const s of shown) expect(evaluateFormula(s.formula, s.inputs) / s.value).toBeCloseTo(1, 12);
    expect(steps.at(-1)?.value).toBe(drop);
  });
});
