import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { heatMet } from './heatMet.ts';
import type { YearRun } from './run.ts';

/** A run in rows of so many seconds; only what is read of it. */
const runOf = (outdoor: readonly number[], rowSeconds: number): YearRun =>
  ({ outdoor: Float64Array.from(outdoor), rows: outdoor.length, rowSeconds }) as unknown as YearRun;
const sum = (x: readonly number[]): number => x.reduce((a, b) => a + b, 0);

describe('the hours of a year by outdoor temperature and heat needed', () => {
  it('hold all hours with heat, all heat, and their mean temperature', () => {
    const hour = fc.record({
      t: fc.double({ min: -30, max: 30, noNaN: true }),
      load: fc.oneof(fc.constant(0), fc.double({ min: 1, max: 12_000, noNaN: true })),
    });
    fc.assert(
      fc.property(fc.array(hour, { minLength: 1, maxLength: 300 }), (hours) => {
        const met = heatMet(
          runOf(
            hours.map((h) => h.t),
            3600,
          ),
          Float64Array.from(hours.map((h) => h.load)),
        );
        const heated = hours.filter((h) => h.load > 0);
        expect(sum(met.map((m) => m.hours))).toBe(heated.length);
        expect(sum(met.map((m) => m.hours * m.load))).toBeCloseTo(sum(heated.map((h) => h.load)), 4);
        expect(sum(met.map((m) => m.hours * m.outdoor))).toBeCloseTo(sum(heated.map((h) => h.t)), 6);
      }),
      { seed: 20261125, numRuns: 100 },
    );
  });

  it('are hours also where rows are quarters of one', () => {
    const [met] = heatMet(runOf([0, 0, 0, 0], 900), Float64Array.from([4000, 0, 0, 0]));
    expect(met).toEqual({ outdoor: 0, load: 1000, hours: 1 });
  });
});
