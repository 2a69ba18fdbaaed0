import { describe, expect, it } from 'vitest';
import { sameOnes } from './sameOnes.ts';

describe('a thing made of the same as the last at its place', () => {
  it('is the same object, and another for more, fewer or other things', () => {
    const same = sameOnes<object>();
    const [a, b] = [{}, {}];
    const first = same(0, [a, b], () => ({}));
    expect(same(0, [a, b], () => ({}))).toBe(first);
    expect(same(1, [a, b], () => ({}))).not.toBe(first);
    for (const of of [[a], [a, b, undefined], [b, a], [{}, b]]) {
      const other = same(0, of, () => ({}));
      expect(other).not.toBe(first);
      expect(same(0, [a, b], () => first)).toBe(first);
    }
  });
});
