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
  const flows = Float64Array.from(points, (p) => p.flow);
  const pressures = Float64Array.from(points, (p) => p.pressure);
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
export function fanPressure(curve: FanCurve, flow: number): number {
  const { i, t, h, y0, y1, m0, m1 } = piece(curve, flow);
  if (i < 0) return y0 + m0 * t;
  return (
    (1 + 2 * t) * (1 - t) ** 2 * y0 + t * (1 - t) ** 2 * h * m0 + t * t * (3 - 2 * t) * y1 + t * t * (t - 1) * h * m1
  );
}

/** d pressure / d flow, Pa s/m³. */
export function fanSlope(curve: FanCurve, flow: number): number {
  const { i, t, h, y0, y1, m0, m1 } = piece(curve, flow);
  if (i < 0) return m0;
  return (6 * t * (t - 1) * (y0 - y1)) / h + (1 - t) * (1 - 3 * t) * m0 + t * (3 * t - 2) * m1;
}

function piece(c: FanCurve, flow: number) {
  const n = c.flows.length;
  const at = (a: Float64Array, k: number): number => a[k] ?? 0;
  const beyond = (k: number) => ({
    i: -1,
    t: flow - at(c.flows, k),
    h: 0,
    y0: at(c.pressures, k),
    y1: 0,
    m0: at(c.slopes, k),
    m1: 0,
  });
  if (n < 2 || flow <= at(c.flows, 0)) return beyond(0);
  if (flow >= at(c.flows, n - 1)) return beyond(n - 1);
  let i = 0;
  while (i < n - 2 && flow > at(c.flows, i + 1)) i++;
  const h = at(c.flows, i + 1) - at(c.flows, i);
  return {
    i,
    t: (flow - at(c.flows, i)) / h,
    h,
    y0: at(c.pressures, i),
    y1: at(c.pressures, i + 1),
    m0: at(c.slopes, i),
    m1: at(c.slopes, i + 1),
  };
}

/**
 * Every flow at which a curve meets a system, found by scanning for changes of sign and halving: a curve with a hump
 * may have several. `system` gives the pressure a flow needs, Pa.
 */
export function operatingPoints(curve: FanCurve, system: (flow: number) => number, scans = 400): number[] {
  const top = curve.flows.at(-1) ?? 0;
  const miss = (q: number) => fanPressure(curve, q) - system(q);
  const found: number[] = [];
  for (let k = 0; k < scans; k++) {
    let [low, high] = [(top * k) / scans, (top * (k + 1)) / scans];
    if (miss(low) > 0 === miss(high) > 0) continue;
    const rising = miss(low) < 0;
    for (let i = 0; i < 60; i++) {
      const middle = (low + high) / 2;
      if (miss(middle) < 0 === rising) low = middle;
      else high = middle;
    }
    found.push((low + high) / 2);
  }
  return found;
}
