import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { applied, differenceOf } from './difference.ts';

const value = fc.letrec((tie) => ({
  value: fc.oneof(
    { maxDepth: 4 },
    fc.constantFrom<unknown>(undefined, null, true, 0, -0, Number.NaN, 'a', 'b', 1.5),
    fc.array(tie('value'), { maxLength: 3 }),
    fc.dictionary(fc.constantFrom('a', 'b', 'c', '1'), tie('value'), { noNullPrototype: true, maxKeys: 3 }),
  ),
})).value;

describe('what of a plan is another than before', () => {
  it('makes of the one what the other is, after a way through a message, names in their order', () => {
    fc.assert(
      fc.property(value, value, (before, after) => {
        const made = applied(before, structuredClone(differenceOf(before, after)));
        expect(made).toStrictEqual(after);
        expect(JSON.stringify(made)).toBe(JSON.stringify(after));
      }),
      { seed: 20261128, numRuns: 2000 },
    );
  });

  it('sends only what moved, and leaves the rest the same objects', () => {
    const before = {
      findings: [
        { id: 'a', value: 1 },
        { id: 'b', value: 2 },
      ],
      trades: { air: { flow: [1, 2] } },
    };
    const after = structuredClone(before);
    expect(differenceOf(before, after)).toBe(undefined);
    const moved = {
      ...after,
      findings: [
        { id: 'a', value: 1 },
        { id: 'b', value: 3 },
      ],
    };
    const difference = differenceOf(before, moved);
    expect(difference).toEqual({ parts: [['findings', { parts: [['1', { parts: [['value', { now: 3 }]] }]] }]] });
    const made = applied(before, difference) as typeof before;
    expect(made.findings[0]).toBe(before.findings[0]);
    expect(made.trades).toBe(before.trades);
    expect(before.findings[1]?.value).toBe(2);
  });
});
