import { idPattern } from '@kneewall/project';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { entryId, orderAfter, randomId } from './newIds.ts';

describe('names for new things', () => {
  it('are ids the document takes, and never one that is taken', () => {
    fc.assert(
      fc.property(fc.string(), fc.array(fc.nat(5)), (one, numbers) => {
        const taken = Object.fromEntries(numbers.map((n) => [entryId(one, {}).replace(/\d+$/, String(n)), {}]));
        const id = entryId(one, taken);
        return idPattern.test(id) && !(id in taken);
      }),
      { seed: 7 },
    );
    expect(idPattern.test(randomId())).toBe(true);
  });
  it('order keys rise however many follow each other', () => {
    let key = orderAfter(undefined);
    for (let n = 0; n < 500; n++) {
      const next = orderAfter(key);
      expect(next > key).toBe(true);
      key = next;
    }
    expect(key.length).toBeLessThan(64);
  });
});
