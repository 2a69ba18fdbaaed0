import type { Given } from '@kneewall/project';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Draft, judge } from './judge.ts';
import { attempt, unresolved } from './outcome.ts';
import { spread } from './scenario.ts';

const draft = (value: Draft['value'], limit: Draft['limit'], marginWanted?: number): Draft => ({
  id: 'x',
  subject: 's',
  holdPoint: 'decide',
  consequence: 'money',
  kind: 'number',
  value,
  limit,
  source: 's',
  working: 'w',
  ...(marginWanted === undefined ? {} : { marginWanted }),
});
const range = (low: number, likely: number, high: number): Draft['value'] => ({
  ok: true,
  value: { low, likely, high },
});

describe('a status', () => {
  it.each([
    ['the whole range passes', range(1, 2, 3), { max: 4 }, 'ok', 2],
    ['part of the range fails', range(1, 2, 5), { max: 4 }, 'tight', 2],
    ['the likely value fails', range(1, 5, 6), { max: 4 }, 'fails', -1],
    ['below a least value', range(1, 1, 1), { min: 2 }, 'fails', -1],
    ['between two limits', range(3, 3, 3), { min: 2, max: 4 }, 'ok', 1],
    ['just at the limit', range(0.1 + 0.2, 0.1 + 0.2, 0.1 + 0.2), { max: 0.3 }, 'ok', 0],
  ] as const)('when %s', (_name, value, limit, status, margin) => {
    const j = judge(draft(value, limit));
    expect(j.status).toBe(status);
    expect(j.margin).toBeCloseTo(margin, 9);
  });

  it.each([
    ['a number over zero', range(1, Number.POSITIVE_INFINITY, 2)],
    ['zero over zero', { ok: true, value: Number.NaN }],
  ] as const)('is unknown, and prints no number, for %s', (_name, value) => {
    const j = judge(draft(value, { max: 4 }));
    expect(j).toMatchObject({ status: 'unknown', because: 'out-of-range', value: { ok: false } });
    expect(j.margin).toBeUndefined();
  });

  it('is tight where it passes by less than is wanted', () => {
    expect(judge(draft({ ok: true, value: 3.5 }, { max: 4 }, 1)).status).toBe('tight');
  });

  it('is unknown, with what it needs, where there is no value', () => {
    expect(
      judge(
        draft(
          attempt(() => unresolved('missing', 'house.floorArea')),
          { max: 4 },
        ),
      ),
    ).toMatchObject({ status: 'unknown', because: 'missing', needs: ['house.floorArea'] });
  });
});

describe('a spread', () => {
  const given = (path: string, low: number, likely: number, high: number): Given => ({
    path,
    kind: 'number',
    known: 'estimated',
    low,
    likely,
    high,
  });

  it('of a sum is the root of the squares, drivers largest first (closed form)', () => {
    const inputs = [given('a', 9, 10, 11), given('b', 16, 20, 24), given('c', 5, 5, 5)];
    const { y } = spread((s) => ({ y: inputs.reduce((t, g) => t + s.of(g), 0) }));
    expect(y.likely).toBe(35);
    expect(y.high).toBeCloseTo(35 + Math.hypot(1, 4), 12);
    expect(y.low).toBeCloseTo(35 - Math.hypot(1, 4), 12);
    expect(y.drivers.map((d) => d.path)).toEqual(['b', 'a']);
  });

  it('is the same to the last bit whether or not pieces are used again', () => {
    const triple = fc.tuple(
      fc.double({ min: 0, max: 1, noNaN: true }),
      fc.double({ min: 1, max: 2, noNaN: true }),
      fc.double({ min: 2, max: 3, noNaN: true }),
    );
    fc.assert(
      fc.property(fc.array(triple, { minLength: 2, maxLength: 6 }), (triples) => {
        const inputs = triples.map(([a, b, c], i) => given(`g${i}`, a, b, c));
        const whole = spread((s) => ({ y: inputs.reduce((t, g) => t * Math.sin(s.of(g)) + s.of(g), 1) }));
        const pieces = spread((s) => ({
          y: inputs.reduce(
            (t, g) => t * s.part(`sin ${g.path}`, (x) => Math.sin(x.of(g))) + s.part(g.path, (x) => x.of(g)),
            1,
          ),
        }));
        expect(pieces).toEqual(whole);
      }),
      { seed: 20261125, numRuns: 100 },
    );
  });
});
