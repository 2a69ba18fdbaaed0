import { numbersOf } from './columns.ts';

/** A curve through points, smooth and without overshoot: falling points give a falling curve. */
export type FanCurve = {
  readonly flows: Float64Array;
  readonly pressures: Float64Array;
  readonly slopes: Float64Array;
};

/**
 * Compiles points of rising flow (m³/s) into a monotone cubic (Fritsch-Carlson slopes, harmonic means). Beyond its
 * ends the curve goes on straight, so that a search stays finite; whoever uses it must check that the answer is within.
 */
export function compileFan(points: readonly { readonly flow: number; readonly pressure: number }[]): FanCurve {
  const flows = numbersOf(points, (p) => p.flow);
  const pressures = numbersOf(points, (p) => p.pressure);
  const n = flows.length;
  const at = (a: Float64Array, i: number): number => a[i] ?? 0;
  const chord = (i: number) => (at(pressures, i + 1) - at(pressures, i)) / (at(flows, i + 1) - at(flows, i));
  const slopes = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    if (i === 0 || i === n - 1) slopes[i] = n > 1 ? chord(Math.min(i, n - 2)) : 0;
    else {
      const [a, b] = [chord(i - 1), chord(i)];
      slopes[i] = a * b > 0 ? (2 * a * b) / (a + b) : 0;
    }
  }
  return { flows, pressures, slopes };
}

/** Pressure of the curve at a flow, Pa. */
export function fanPressure(c: FanCurve, flow: number): number {
  const i = pieceOf(c, flow);
  const x0 = c.flows[i] ?? 0;
  const y0 = c.pressures[i] ?? 0;
  const m0 = c.slopes[i] ?? 0;
  if (beyond(c, i, flow)) return y0 + m0 * (flow - x0);
  const h = (c.flows[i + 1] ?? 0) - x0;
  const t = (flow - x0) / h;
  const y1 = c.pressures[i + 1] ?? 0;
  const m1 = c.slopes[i + 1] ?? 0;
  return (
    (1 + 2 * t) * (1 - t) ** 2 * y0 + t * (1 - t) ** 2 * h * m0 + t * t * (3 - 2 * t) * y1 + t * t * (t - 1) * h * m1
  );
}

/** d pressure / d flow, Pa s/m³. */
export function fanSlope(c: FanCurve, flow: number): number {
  const i = pieceOf(c, flow);
  const m0 = c.slopes[i] ?? 0;
  if (beyond(c, i, flow)) return m0;
  const x0 = c.flows[i] ?? 0;
  const h = (c.flows[i + 1] ?? 0) - x0;
  const t = (flow - x0) / h;
  const rise = (c.pressures[i] ?? 0) - (c.pressures[i + 1] ?? 0);
  return (6 * t * (t - 1) * rise) / h + (1 - t) * (1 - 3 * t) * m0 + t * (3 * t - 2) * (c.slopes[i + 1] ?? 0);
}

/** The last point at or before a flow, the first where none is. */
function pieceOf(c: FanCurve, flow: number): number {
  let low = 0;
  let high = c.flows.length - 1;
  if (flow >= (c.flows[high] ?? 0)) return high;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (flow > (c.flows[middle] ?? 0)) low = middle;
    else high = middle;
  }
  return low;
}

const beyond = (c: FanCurve, i: number, flow: number): boolean =>
  i === c.flows.length - 1 || (flow <= (c.flows[i] ?? 0) && i === 0);

/**
 * Every flow at which a curve meets a system, found by scanning for changes of sign and halving: a curve with a hump
 * may have several. `system` gives the pressure a flow needs, Pa; it is asked about `scans` times and 60 for each find.
 */
export function operatingPoints(curve: FanCurve, system: (flow: number) => number, scans = 400): number[] {
  const top = curve.flows.at(-1) ?? 0;
  const miss = (q: number) => fanPressure(curve, q) - system(q);
  const found: number[] = [];
  let before = miss(0);
  for (let k = 0; k < scans; k++) {
    let [low, high] = [(top * k) / scans, (top * (k + 1)) / scans];
    const rising = before < 0;
    before = miss(high);
    if (rising === before < 0) continue;
    for (let i = 0; i < 60; i++) {
      const middle = (low + high) / 2;
      if (miss(middle) < 0 === rising) low = middle;
      else high = middle;
    }
    found.push((low + high) / 2);
  }
  return found;
}
