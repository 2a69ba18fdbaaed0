import type { Highs } from 'highs';
import type { LinearSolver, Solved } from './programme.ts';

/** Most steps of the simplex method, a count and not a time, so that a slow machine finds what a fast one does. */
const stepsMost = 2_000_000;
/** Steps after which it is told how far it is. */
const toldEach = 500;

/** The library, which a host has loaded, as a solver. Equal programmes give equal answers: nothing is kept between them. */
export const highsSolver =
  (highs: Highs): LinearSolver =>
  (lp, tell) =>
    highs.withModel(
      {
        numCols: lp.columns,
        numRows: lp.rows,
        colCost: lp.cost,
        colLower: lp.lower,
        colUpper: lp.upper,
        rowLower: lp.rowLower,
        rowUpper: lp.rowUpper,
        matrix: {
          format: 'csc',
          numRows: lp.rows,
          numCols: lp.columns,
          starts: lp.starts,
          indices: lp.index,
          values: lp.value,
        },
      },
      (model): Solved => {
        model.options.set({ output_flag: false, simplex_iteration_limit: stepsMost, random_seed: 0 });
        const { callbackType, modelStatus } = highs.constants;
        model.run({
          [callbackType.simplexInterrupt]: (event) => {
            const steps = event.data.simplex_iteration_count ?? 0;
            if (steps % toldEach === 0) tell?.(steps);
            return undefined;
          },
        });
        const status = model.getModelStatus();
        if (status === modelStatus.infeasible) {
          const ray = model.getDualRay();
          return { status: 'infeasible', ...(ray ? { prices: ray.values } : {}) };
        }
        if (status !== modelStatus.optimal) return { status: 'stopped' };
        const { colValue, rowDual } = model.getSolution();
        return { status: 'optimal', values: colValue, prices: rowDual };
      },
    );
