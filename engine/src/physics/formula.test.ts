import { describe, expect, it } from 'vitest';
import { evaluateFormula } from './formula.ts';

describe('the arithmetic of workings', () => {
  it.each<[string, number]>([
    ['1 + 2 * 3', 7],
    ['(1 + 2) * 3', 9],
    ['2 ^ 3 ^ 2', 512],
    ['-2 ^ 2', -4],
    ['8 / 4 / 2', 1],
    ['10 - 3 - 2', 5],
    ['sqrt(a) * max(b, 2)', 12],
    ['a * (t_in - t_out)', 216],
    ['1e3 + ln(exp(2))', 1002],
  ])('%s', (formula, value) => {
    expect(evaluateFormula(formula, { a: 9, b: 4, t_in: 20, t_out: -4 })).toBeCloseTo(value, 12);
  });

  it.each(['a +', 'a b', 'unknown', 'foo(1)', '(a', '1 $ 2', ''])('refuses %j', (formula) => {
    expect(() => evaluateFormula(formula, { a: 1, b: 2 })).toThrow();
  });
});
