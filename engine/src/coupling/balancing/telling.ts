import type { Fit } from './fitRuns.ts';
import { logFlows, slopesOf } from './fitRuns.ts';
import type { Runs } from './runs.ts';

const checksMost = 2;
/** A second register is read only where it settles this part more of what is in doubt. */
const worthwhile = 0.15;

/**
 * Places whose flow, read once more the same way, would settle most of what is in doubt about all shares after the
 * moves; the best first, two at most. `alone` is what a reading is off by itself.
 */
export function tellingPlaces(after: Runs, fit: Fit, alone: number): number[] {
  const n = after.places.length;
  const flowsAt = logFlows(after);
  const slopes = slopesOf(flowsAt, fit.logs, flowsAt(fit.logs));
  let spread = spreadOf(slopes, fit.covariance, n);
  const all = trace(spread, n);
  const chosen: number[] = [];
  while (chosen.length < Math.min(checksMost, n)) {
    const gains = Array.from({ length: n }, (_, i) => gainOf(spread, n, i, alone));
    const best = gains.reduce((b, g, i) => (g > (gains[b] ?? 0) ? i : b), 0);
    if (chosen.includes(best) || (chosen.length > 0 && (gains[best] ?? 0) < worthwhile * all)) break;
    chosen.push(best);
    spread = without(spread, n, best, alone);
  }
  return chosen;
}

/** Covariance of the logarithms of flows, [n × n]. */
function spreadOf(slopes: Float64Array, covariance: Float64Array, n: number): Float64Array {
  const half = product(slopes, covariance, n, false);
  return product(half, slopes, n, true);
}

function product(a: Float64Array, b: Float64Array, n: number, turned: boolean): Float64Array {
  const out = new Float64Array(n * n);
  for (let i = 0; i < n; i++)
    for (let j = 0; j < n; j++) {
      let sum = 0;
      for (let k = 0; k < n; k++) sum += (a[i * n + k] ?? 0) * (b[turned ? j * n + k : k * n + j] ?? 0);
      out[i * n + j] = sum;
    }
  return out;
}

const trace = (m: Float64Array, n: number): number => {
  let sum = 0;
  for (let i = 0; i < n; i++) sum += m[i * n + i] ?? 0;
  return sum;
};

function gainOf(m: Float64Array, n: number, i: number, alone: number): number {
  let sum = 0;
  for (let k = 0; k < n; k++) sum += (m[k * n + i] ?? 0) ** 2;
  return sum / ((m[i * n + i] ?? 0) + alone ** 2 + 1e-18);
}

function without(m: Float64Array, n: number, i: number, alone: number): Float64Array {
  const whole = (m[i * n + i] ?? 0) + alone ** 2 + 1e-18;
  return m.map((x, at) => x - ((m[Math.floor(at / n) * n + i] ?? 0) * (m[i * n + (at % n)] ?? 0)) / whole);
}
