import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { madeOfTheSame } from './sameParts.ts';

describe('values made of the same', () => {
  it('are those whose copies cannot be told apart, and no others', () => {
    const value = fc.jsonValue();
    fc.assert(fc.property(value, (x) => madeOfTheSame(x, structuredClone(x))));
    fc.assert(
      fc.property(value, value, (x, y) => {
        // What is told apart in writing is told apart here; nought has two signs, which writing loses.
        if (JSON.stringify(x) !== JSON.stringify(y)) expect(madeOfTheSame(x, y)).toBe(false);
      }),
    );
  });

  it('are not those that differ in the last bit, the sign of nought, the order of names or what is left out', () => {
    expect(madeOfTheSame([1], [1 + Number.EPSILON])).toBe(false);
    expect(madeOfTheSame({ a: 0 }, { a: -0 })).toBe(false);
    expect(madeOfTheSame({ a: 1, b: 2 }, { b: 2, a: 1 })).toBe(false);
    expect(madeOfTheSame({ a: undefined }, {})).toBe(false);
    expect(madeOfTheSame({ a: Number.NaN }, { a: Number.NaN })).toBe(true);
  });

  it('keep apart what is not plain', () => {
    expect(madeOfTheSame(new Float64Array([1]), new Float64Array([1]))).toBe(false);
    expect(madeOfTheSame(new Map([[1, 1]]), new Map([[1, 1]]))).toBe(false);
  });
});
