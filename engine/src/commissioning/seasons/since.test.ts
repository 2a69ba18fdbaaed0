import { describe, expect, it } from 'vitest';
import type { ReadingFound, Visit } from '../result.ts';
import type { VisitState } from '../visit.ts';
import { since } from './since.ts';

const state: VisitState = {
  ...{ mode: 'cooling', speed: 'most', outdoor: 30, returnAir: 24 },
  ...{ returnHumidity: 0.5, humidityRead: true, pressure: 101_325 },
};

/** A visit with readings of the pressure across the unit, and of the supply air, each with what its state asks for. */
function visit(
  id: string,
  pressures: readonly [net: number, should: number][],
  supply?: readonly [number, number],
): Visit {
  const readings: ReadingFound[] = [
    ...pressures.map(
      ([net, should], i): ReadingFound => ({
        ...{ id: `${id}-${i}`, expected: 'air/static', group: 'pressure', value: net, net, should },
      }),
    ),
    ...(supply
      ? [
          {
            ...{ id: `${id}-s`, expected: 'commissioning/supply-air', group: 'temperature' as const },
            ...{ value: supply[0], net: supply[0], should: supply[1] },
          },
        ]
      : []),
  ];
  return {
    ...{ id, name: id, filter: 'clean', strips: 'off', dampers: {}, state: { ok: true, value: state } },
    taken: readings.map((r) => ({
      ...{ id: r.id, expected: r.expected, value: r.value, repeats: 1, baseTaken: 'unknown' as const },
      means: r.group === 'pressure' ? ('gauge' as const) : ('thermometer' as const),
    })),
    found: {
      ok: true,
      value: {
        ...{
          expected: [],
          readings,
          suspects: [],
          rest: 0,
          sound: 1,
          involved: {},
          kinds: 1,
          next: [],
          lost: [],
          witnesses: { expected: 0.2 },
        },
      },
    },
  };
}

describe('a number like for like against the first start', () => {
  it('is nought where both stand to their own expectation alike, whatever the weather and the gauge’s own error', () => {
    const [pressure, supply] = since(visit('a', [[165, 150]], [12.5, 12]), visit('b', [[110, 100]], [14.5, 14]));
    expect(pressure?.change).toBeCloseTo(0, 12);
    expect(supply?.change).toBeCloseTo(0, 12);
    // Two readings of 5 % each, by the root of the sum of squares.
    expect(pressure?.error).toBeCloseTo(0.05 * Math.SQRT2, 12);
    expect(supply?.error).toBeCloseTo(0.3 * Math.SQRT2, 12);
  });

  it('is the share by which it moved, told more sharply by more readings', () => {
    const [one] = since(visit('a', [[150, 150]]), visit('b', [[195, 150]]));
    const [many] = since(
      visit('a', [[150, 150]]),
      visit('b', [
        [190, 150],
        [195, 150],
        [200, 150],
      ]),
    );
    expect(one?.change).toBeCloseTo(0.3, 12);
    expect(many?.change).toBeCloseTo(0.3, 12);
    expect(many?.error ?? 1).toBeLessThan(one?.error ?? 0);
  });

  it('is not told where the modes differ or nothing was read twice', () => {
    const heating: Visit = { ...visit('b', [[150, 150]]), state: { ok: true, value: { ...state, mode: 'heating' } } };
    expect(since(visit('a', [[150, 150]]), heating)).toEqual([]);
    expect(since(visit('a', [], [12, 12]), visit('b', [[150, 150]]))).toEqual([]);
  });
});
