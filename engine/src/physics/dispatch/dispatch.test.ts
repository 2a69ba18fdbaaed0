import fc from 'fast-check';
import loadHighs from 'highs';
import { beforeAll, describe, expect, it } from 'vitest';
import { highsSolver } from './highsSolver.ts';
import { certify, type LinearProgramme, type LinearSolver, programmeBuilder, provesInfeasible } from './index.ts';

let solve: LinearSolver;
beforeAll(async () => {
  solve = highsSolver(await loadHighs());
});

/** Least 2x + 3y with x + y >= 4, x <= 3, y <= 5: 9 at (3, 1), where a unit more of the row costs 3. */
function small(): LinearProgramme {
  const b = programmeBuilder();
  const row = b.row(4, Number.POSITIVE_INFINITY);
  b.column(2, 0, 3, [[row, 1]]);
  b.column(3, 0, 5, [[row, 1]]);
  return b.done();
}

describe('the certificate of a least cost', () => {
  it('holds for the optimum and its price, by hand', () => {
    const found = certify(small(), Float64Array.of(3, 1), Float64Array.of(3));
    expect(found).toMatchObject({ cost: 9, bound: 9, miss: 0, gap: 0, holds: true });
  });

  it('does not hold for values that break a row, leave a bound, cost too much or are no numbers', () => {
    const held = (x: number, y: number, price = 3) =>
      certify(small(), Float64Array.of(x, y), Float64Array.of(price)).holds;
    expect(held(2, 1)).toBe(false);
    expect(held(4, 0)).toBe(false);
    expect(held(2, 2)).toBe(false);
    expect(held(3, 1, 2)).toBe(false);
    expect(held(Number.NaN, 1)).toBe(false);
    expect(held(3, 1, Number.NaN)).toBe(false);
    expect(certify(small(), Float64Array.of(3), Float64Array.of(3)).holds).toBe(false);
  });

  it('bounds the cost of everything that fits, whatever the prices', () => {
    const unit = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(fc.double({ min: -10, max: 10, noNaN: true }), unit, unit, (price, a, b) => {
        const x = 3 * a;
        const y = Math.max(4 - x, 5 * b);
        const { bound, cost } = certify(small(), Float64Array.of(x, y), Float64Array.of(price));
        return bound <= cost + 1e-9;
      }),
      { seed: 3 },
    );
  });

  it('proves that nothing fits only where nothing does', () => {
    const b = programmeBuilder();
    const row = b.row(9, Number.POSITIVE_INFINITY);
    b.column(1, 0, 3, [[row, 1]]);
    b.column(1, 0, 5, [[row, 1]]);
    const never = b.done();
    expect(solve(never).status).toBe('infeasible');
    expect(provesInfeasible(never, Float64Array.of(1))).toBe(true);
    expect(provesInfeasible(small(), Float64Array.of(1))).toBe(false);
    expect(provesInfeasible(never, Float64Array.of(0))).toBe(false);
  });
});
