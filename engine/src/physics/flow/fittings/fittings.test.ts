import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  bladeAngle,
  branchLoss,
  branchLossOnBranch,
  fittingLoss,
  lookUp,
  lossTables,
  straightRunLoss,
} from './index.ts';

const value = (looked: ReturnType<typeof lookUp>): number => (looked.ok ? looked.value : Number.NaN);

describe.each(lossTables.map((t) => [t.id, t] as const))('the table of %s', (_id, table) => {
  const [from, to] = [table.points[0]?.[0] ?? 0, table.points.at(-1)?.[0] ?? 0];

  it('gives each of its own points and stays between its neighbours elsewhere', () => {
    for (const [x, y] of table.points) expect(value(lookUp(table, x))).toBe(y);
    fc.assert(
      fc.property(fc.double({ min: from, max: to, noNaN: true }), (x) => {
        const after = table.points.findIndex(([at]) => at >= x);
        const ends = [table.points[Math.max(0, after - 1)]?.[1] ?? 0, table.points[after]?.[1] ?? 0];
        const y = value(lookUp(table, x));
        return y >= Math.min(...ends) - 1e-12 && y <= Math.max(...ends) + 1e-12;
      }),
      { seed: 20261125, numRuns: 300 },
    );
  });

  it('says how far it goes rather than carry on beyond its ends', () => {
    for (const x of [from - 0.01, to + 0.01, Number.NaN])
      expect(lookUp(table, x)).toMatchObject({ ok: false, input: table.input, from, to });
  });
});

describe('a damper’s blade', () => {
  // checks/air 5, SMACNA 14-18A, from memory.
  it('stands at the published angle for the published loss, and nowhere beyond 60 degrees', () => {
    const published = [0.2, 0.52, 1.5, 4.5, 11, 29, 108];
    expect(published.map((loss) => value(bladeAngle(loss)))).toEqual([0, 10, 20, 30, 40, 50, 60]);
    for (const loss of [0.19, 108.1, Number.NaN, Number.POSITIVE_INFINITY]) expect(bladeAngle(loss).ok).toBe(false);
  });

  it('turned so far loses what was asked of it', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.2, max: 108, noNaN: true }), (loss) => {
        const back = value(fittingLoss('damper', { angle: value(bladeAngle(loss)) }));
        return Math.abs(back / loss - 1) < 1e-9;
      }),
      { seed: 20261125, numRuns: 200 },
    );
  });
});

describe('fittings', () => {
  it('turn by less for less, and by nothing for nothing', () => {
    const at = (angle: number) => value(fittingLoss('elbow-round', { radius: 1, angle }));
    expect([0, 30, 45, 90, 180].map(at)).toEqual([0, 30, 45, 90, 180].map(at).sort((a, b) => a - b));
    expect(at(0)).toBe(0);
    expect(at(90)).toBe(value(fittingLoss('elbow-round')));
  });

  it('a flexible bend as drawn is one on a radius of one diameter, and a tighter one costs more', () => {
    const at = (radius: number) => value(fittingLoss('bend-flexible', { radius }));
    expect(at(1)).toBeCloseTo(value(fittingLoss('bend-flexible')), 12);
    expect(at(0.5)).toBeGreaterThan(3 * at(1));
  });

  it('of a shape that no table covers say which number and how far the table goes', () => {
    expect(fittingLoss('elbow-round', { radius: 4 })).toEqual({
      ok: false,
      input: 'centre-line radius over diameter',
      found: 4,
      from: 0.5,
      to: 2.5,
    });
    expect(fittingLoss('damper', { angle: 70 }).ok).toBe(false);
  });

  it('a tee that neither slows nor turns costs nothing; a branch on its own velocity is the same pressure', () => {
    expect(straightRunLoss(1)).toBe(0);
    expect(branchLoss(1, 0)).toBe(0);
    expect(branchLossOnBranch(0.6, 90) * 0.6 ** 2).toBeCloseTo(branchLoss(0.6, 90), 14);
  });
});
