import { CholeskyDecomposition, inverse, Matrix } from 'ml-matrix';
import type { Chance } from '../chance.ts';
import type { Square, Ties } from '../result.ts';

/** How one day's warmth, clearness and wind, as numbers of spread 1, lead to the next day's, and what chance adds. */
export type Walk = { readonly onward: Matrix; readonly push: Matrix };

/** The walk of days. */
export type DayWalk = Walk & {
  /** Variance that a month's mean has of itself, by warmth, clearness and wind. */
  readonly ofMonths: readonly [number, number, number];
};

/** Days of a month, for what taking out its mean does to the ties. */
const monthDays = 30;
/** By how much a walk that would run away is held back at a time. */
const most = 0.97;

/**
 * The first-order vector autoregression whose days, once each month's mean is taken out, are tied as given. Taking out a
 * mean takes from every product of two days the variance of that mean: it is put back by turns. Source: `climate.winters`.
 */
export function dayWalk({ now, next }: Pick<Ties, 'now' | 'next'>): DayWalk {
  // Ties are kept by rows of the earlier day; here the later day stands first.
  const [same, later] = [plain(now), plain(next).transpose()];
  let means = Matrix.zeros(3, 3);
  let walk = regression(same, later);
  for (let turn = 0; turn < 25; turn++) {
    means = meansOf(walk.onward, Matrix.add(same, means));
    walk = regression(Matrix.add(same, means), Matrix.add(later, means));
  }
  const at = (i: number): number => means.get(i, i);
  return { ...walk, ofMonths: [at(0), at(1), at(2)] };
}

const plain = (s: Square): Matrix => new Matrix(s.map((row) => [...row]));

/** Onward and push from the covariance of a day, and of a day with the day before it. */
function regression(same: Matrix, later: Matrix): Walk {
  const asTied = later.mmul(inverse(same));
  // Ties read off few days may not belong together: the walk is then held back until chance has something left to add.
  for (let kept = 1; ; kept *= most) {
    const onward = Matrix.mul(asTied, kept);
    const left = Matrix.sub(same, onward.mmul(same).mmul(onward.transpose()));
    const even = Matrix.add(left, left.transpose()).mul(0.5);
    const drawn = new CholeskyDecomposition(even);
    if (drawn.isPositiveDefinite()) return { onward, push: drawn.lowerTriangularMatrix };
    if (kept < 1e-3) throw new Error('assert: days cannot be tied in this way');
  }
}

/** Covariance of a month's mean. */
function meansOf(onward: Matrix, same: Matrix): Matrix {
  let step = same.clone();
  const sum = Matrix.div(same, monthDays);
  for (let lag = 1; lag < monthDays; lag++) {
    step = onward.mmul(step);
    sum.add(Matrix.mul(Matrix.add(step, step.transpose()), (1 - lag / monthDays) / monthDays));
  }
  return sum;
}

/** A walk whose steps carry over so great a share of each number, tied among themselves as given, of spread 1. */
export const tiedEvenly = (now: Square, carried: number): Walk => ({
  onward: Matrix.eye(3, 3, carried),
  push: new CholeskyDecomposition(Matrix.mul(plain(now), 1 - carried ** 2)).lowerTriangularMatrix,
});

/** So many steps of a walk in their order, each warmth, clearness and wind. */
export function walkDays({ onward, push }: Walk, count: number, chance: Chance): readonly (readonly number[])[] {
  let day = Matrix.zeros(3, 1);
  const out: number[][] = [];
  for (let d = -settling; d < count; d++) {
    const drawn = Matrix.columnVector([chance.normal(), chance.normal(), chance.normal()]);
    day = Matrix.add(onward.mmul(day), push.mmul(drawn));
    if (d >= 0) out.push(day.to1DArray());
  }
  return out;
}

/** Days before the first that let the walk forget where it began. */
const settling = 40;
