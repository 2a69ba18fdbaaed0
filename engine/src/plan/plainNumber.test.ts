import { describe, expect, it } from 'vitest';
import { plainNumber } from './plainNumber.ts';

describe('a number of a working', () => {
  it.each([
    [0, '0'],
    [-0, '0'],
    [8702.3456, '8702'],
    [0.16421, '0.1642'],
    [-17, '-17'],
    [101_325, '101300'],
    [1.3561824932267646e-14, '1.356e-14'],
    [2.5e9, '2.500e+9'],
  ])('%d is %s', (value, text) => expect(plainNumber(value)).toBe(text));
  it('is right to half a step of its fourth figure', () => {
    for (const x of [1.23456, 98.7654, 0.00123456, 123456])
      expect(Math.abs(Number(plainNumber(x)) / x - 1)).toBeLessThan(5e-4);
  });
});
