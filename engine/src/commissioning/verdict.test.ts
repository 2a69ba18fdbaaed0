import { describe, expect, it } from 'vitest';
import { chanceFrom } from '../../test/commissioning/chance.ts';
import { methods } from './methods.ts';
import { verdictOf } from './verdict.ts';
import type { Means } from './visit.ts';

const trials = 4000;

/** Words given to readings of a true value (1 is what is expected), the method's own errors drawn. */
function told(means: Means, repeats: number, truthOf: (even: () => number) => number, seed: number) {
  const chance = chanceFrom(seed);
  const { fixed, random } = methods[means];
  const count = { good: 0, off: 0, 'cannot tell': 0 };
  const [group, expected] = means === 'gauge' ? (['pressure', 100] as const) : (['flow', 0.1] as const);
  for (let i = 0; i < trials; i++) {
    const truth = truthOf(chance.even);
    const value = expected * truth * (1 + fixed * chance.normal() + (random / Math.sqrt(repeats)) * chance.normal());
    count[verdictOf({ group, expected, value, means, repeats }).word]++;
  }
  return { good: count.good / trials, off: count.off / trials, cannot: count['cannot tell'] / trials };
}

const healthy = (even: () => number) => 0.92 + 0.16 * even();
const half = (even: () => number) => 0.35 + 0.3 * even();
/** As faults of the table do: 0.2 to 0.78 of what is expected, or 1.22 to 1.8 times it. */
const faulty = (even: () => number) => (even() < 0.7 ? 0.2 + 0.58 * even() : 1.22 + 0.58 * even());

describe('verdicts', () => {
  it.each(['gauge', 'bag', 'vane', 'hood'] as const)('%s: false good and false off at most 2 %', (means) => {
    for (const repeats of [1, 3, 4, 9]) {
      expect(told(means, repeats, faulty, 1).good, `good, ${repeats}`).toBeLessThanOrEqual(0.02);
      expect(told(means, repeats, healthy, 2).off, `off, ${repeats}`).toBeLessThanOrEqual(0.02);
    }
  });

  it('three bags find half flow in nine of ten; no single bag convicts', () => {
    expect(told('bag', 3, half, 3).off).toBeGreaterThanOrEqual(0.9);
    expect(told('bag', 1, half, 3).off).toBe(0);
  });

  it('a bag hardly ever acquits; a gauge acquits nine of ten', () => {
    expect(told('bag', 4, healthy, 4).good).toBeLessThan(0.05);
    expect(told('bag', 4, healthy, 4).cannot).toBeGreaterThan(0.9);
    expect(told('gauge', 1, healthy, 5).good).toBeGreaterThanOrEqual(0.9);
  });

  it('shares of nine, their sum known, acquit seven of ten', () => {
    const chance = chanceFrom(6);
    let good = 0;
    for (let i = 0; i < trials; i++) {
      const error = Math.hypot(0.2 / 3, 0.03);
      const value = healthy(chance.even) * (1 + error * chance.normal());
      if (
        verdictOf({ group: 'flow', expected: 1, value, means: 'bag', repeats: 9, error: error * value }).word === 'good'
      )
        good++;
    }
    expect(good / trials).toBeGreaterThanOrEqual(0.7);
  });

  it('says how many more would tell, and when more will not help', () => {
    const far = verdictOf({ group: 'flow', expected: 1, value: 0.62, means: 'bag', repeats: 1 });
    expect([far.word, far.way.kind]).toEqual(['cannot tell', 'again']);
    const near = verdictOf({ group: 'flow', expected: 1, value: 1, means: 'vane', repeats: 9 });
    expect([near.word, near.way.kind]).toEqual(['cannot tell', 'other']);
  });

  it('is good at the middle without error and off beyond the edge', () => {
    const sure = { group: 'pressure', expected: 1, means: 'gauge', repeats: 1, error: 0 } as const;
    expect(verdictOf({ ...sure, value: 1 }).word).toBe('good');
    expect(verdictOf({ ...sure, value: 1.3 }).word).toBe('off');
  });
});
