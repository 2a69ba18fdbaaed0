import { placeFlow } from '../../air/balance/ways.ts';
import { type FlowSolver, flowSolver, nominalAir } from '../../air/flows.ts';
import { backward, factorise, forward } from '../../physics/bayes/index.ts';
import { unresolved } from '../../plan/outcome.ts';
import { type Runs, scaledRuns, withLosses } from './runs.ts';

/**
 * Standard deviation of the natural logarithm of a run's resistance against the plan's before anything is read.
 * Source: `commissioning.balancing`.
 */
const priorSpread = 0.35;
const roundsMost = 12;
const enough = 1e-9;
const nudge = 1e-3;
/** Keeps exact readings from making a matrix that is none: far below any instrument. */
const errorLeast = 1e-7;

export type Fit = {
  /** Natural logarithms of the factors, their covariance [n × n], and what all readings are off by alike (logarithm). */
  readonly logs: readonly number[];
  readonly covariance: Float64Array;
  readonly offset: number;
};

type Errors = { readonly common: number; readonly alone: readonly number[] };

/**
 * The factor of each run's resistance that explains flows read behind each place (m³/s, > 0), by Gauss's and Newton's
 * way over the whole network: readings are off each by its own error and all by one in common, factors are near 1 before.
 * So noise is not chased, and one damper is not blamed for what a neighbour does. Ends the attempt where flows do not settle.
 */
export function fitRuns(runs: Runs, read: readonly number[], { common, alone }: Errors): Fit {
  const n = read.length;
  const flowsAt = logFlows(runs);
  let logs = new Array<number>(n).fill(0);
  for (let round = 1; ; round++) {
    const flows = flowsAt(logs);
    const slopes = slopesOf((x) => flowsAt(x), logs, flows);
    const miss = read.map((q, i) => Math.log(q) - (flows[i] ?? 0));
    const { gain, factor } = gainOf(slopes, n, { common, alone });
    const aim = Float64Array.from(miss, (m, i) => m + rowTimes(slopes, n, i, logs));
    forward(factor, n, aim);
    backward(factor, n, aim);
    const next = logs.map((_, j) => sum(n, (i) => (gain[j * n + i] ?? 0) * (aim[i] ?? 0)));
    const change = Math.max(...next.map((x, j) => Math.abs(x - (logs[j] ?? 0))));
    logs = next;
    if (change < enough || round >= roundsMost) break;
  }
  const flows = flowsAt(logs);
  const slopes = slopesOf((x) => flowsAt(x), logs, flows);
  const weights = alone.map((a) => 1 / Math.max(a, errorLeast) ** 2);
  const all = sum(n, (i) => weights[i] ?? 0) + 1 / Math.max(common, errorLeast) ** 2;
  return {
    logs,
    covariance: covarianceOf(slopes, n, { common, alone }),
    offset: sum(n, (i) => (weights[i] ?? 0) * (Math.log(read[i] ?? 1) - (flows[i] ?? 0))) / all,
  };
}

/** Natural logarithms of the flows behind each place, for logarithms of the runs' factors. */
export function logFlows({ bare, places, losses }: Runs): (logs: readonly number[]) => number[] {
  const solve: FlowSolver = flowSolver();
  let start: Float64Array | undefined;
  return (logs) => {
    const model = withLosses(scaledRuns(bare, places, logs.map(Math.exp)), places, losses);
    const flows = solve(model, nominalAir, start);
    if (!flows.converged) return unresolved('not-converged', 'routes.ducts');
    start = Float64Array.from(flows.start);
    return places.map((p) => Math.log(placeFlow(p, flows)));
  };
}

/** [n × n] change of every flow's logarithm for a change of every factor's, by differences. */
export function slopesOf(
  flowsAt: (logs: readonly number[]) => number[],
  logs: readonly number[],
  flows: readonly number[],
): Float64Array {
  const n = logs.length;
  const slopes = new Float64Array(n * n);
  for (let j = 0; j < n; j++) {
    const moved = flowsAt(logs.map((x, k) => (k === j ? x + nudge : x)));
    for (let i = 0; i < n; i++) slopes[i * n + j] = ((moved[i] ?? 0) - (flows[i] ?? 0)) / nudge;
  }
  return slopes;
}

const sum = (n: number, of: (i: number) => number): number => {
  let all = 0;
  for (let i = 0; i < n; i++) all += of(i);
  return all;
};

const rowTimes = (matrix: Float64Array, n: number, i: number, x: readonly number[]): number =>
  sum(n, (j) => (matrix[i * n + j] ?? 0) * (x[j] ?? 0));

/** Prior covariance times slopes turned over, and the factor of the covariance of what is read. */
function gainOf(slopes: Float64Array, n: number, { common, alone }: Errors) {
  const gain = new Float64Array(n * n);
  const factor = new Float64Array(n * n);
  for (let i = 0; i < n; i++)
    for (let j = 0; j < n; j++) {
      gain[j * n + i] = priorSpread ** 2 * (slopes[i * n + j] ?? 0);
      factor[i * n + j] =
        sum(n, (k) => priorSpread ** 2 * (slopes[i * n + k] ?? 0) * (slopes[j * n + k] ?? 0)) +
        common ** 2 +
        (i === j ? Math.max(alone[i] ?? 0, errorLeast) ** 2 : 0);
    }
  if (!factorise(factor, n)) return unresolved('not-converged', 'readings');
  return { gain, factor };
}

/** What is left in doubt of the factors once the flows are read. */
function covarianceOf(slopes: Float64Array, n: number, errors: Errors): Float64Array {
  const { gain, factor } = gainOf(slopes, n, errors);
  const left = new Float64Array(n * n);
  const column = new Float64Array(n);
  for (let j = 0; j < n; j++) {
    for (let i = 0; i < n; i++) column[i] = gain[j * n + i] ?? 0;
    forward(factor, n, column);
    backward(factor, n, column);
    for (let i = 0; i < n; i++)
      left[i * n + j] = (i === j ? priorSpread ** 2 : 0) - sum(n, (k) => (gain[i * n + k] ?? 0) * (column[k] ?? 0));
  }
  return left;
}
