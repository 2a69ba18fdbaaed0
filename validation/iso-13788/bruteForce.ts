import { airPermeability, type MonthAir, magnusPressure, type VapourLayer } from '@kneewall/engine/physics';

/** Grid step, m of still air: every layer's sd has to be a multiple of it. */
const step = 0.02;
const hour = 3600;

/**
 * A year of one wall on a fine grid, without hull or events: the pressure at each node is relaxed towards the mean of
 * its neighbours and kept at or below its bound; a node that holds water is kept at saturation; hour by hour. Water at
 * each plane at the end of each month, kg/m², from `start` on. Layers must not need cutting into strips.
 */
export function bruteForceYear(
  layers: readonly VapourLayer[],
  films: { inside: number; outside: number },
  months: readonly MonthAir[],
  start: number,
): number[][] {
  const total = films.inside + films.outside + layers.reduce((a, l) => a + l.resistance, 0);
  const faces: { node: number; r: number }[] = [];
  let [sd, r] = [0, films.inside];
  for (const l of layers) {
    sd += l.sd;
    r += l.resistance;
    faces.push({ node: Math.round(sd / step), r });
  }
  const nodes = faces.at(-1)?.node ?? 0;
  const store = new Float64Array(nodes + 1);
  return months.map((_, k) => {
    const m = months[(start + k) % months.length];
    if (!m) throw new Error('assert: a month');
    const bound = new Float64Array(nodes + 1).fill(Number.POSITIVE_INFINITY);
    for (const f of faces) bound[f.node] = magnusPressure(m.indoor + ((m.outdoor - m.indoor) * f.r) / total);
    hours(store, bound, m);
    return faces.slice(0, -1).map((f) => store[f.node] ?? 0);
  });
}

function hours(store: Float64Array, bound: Float64Array, m: MonthAir): void {
  let pinned = '';
  let p = new Float64Array(0);
  for (let h = 0; h < m.days * 24; h++) {
    const now = store.map((x) => (x > 0 ? 1 : 0)).join('');
    if (now !== pinned) p = relaxed(store, bound, m);
    pinned = now;
    for (let i = 1; i < store.length - 1; i++) {
      if (bound[i] === Number.POSITIVE_INFINITY) continue;
      const kink = (p[i - 1] ?? 0) - 2 * (p[i] ?? 0) + (p[i + 1] ?? 0);
      // Relaxing leaves a trace of curvature at free planes; it is no water.
      if (store[i] === 0 && kink < 1e-6) continue;
      store[i] = Math.max(0, (store[i] ?? 0) + ((airPermeability * kink) / step) * hour);
    }
  }
}

/** Projected over-relaxation until nothing moves by more than 1e-10 Pa. */
function relaxed(store: Float64Array, bound: Float64Array, m: MonthAir): Float64Array<ArrayBuffer> {
  const last = store.length - 1;
  const p = new Float64Array(last + 1).map((_, i) => m.indoorVapour + ((m.outdoorVapour - m.indoorVapour) * i) / last);
  for (let sweep = 0; sweep < 20_000; sweep++) {
    let moved = 0;
    for (let i = 1; i < last; i++) {
      const old = p[i] ?? 0;
      const free = old + 1.94 * (((p[i - 1] ?? 0) + (p[i + 1] ?? 0)) / 2 - old);
      const next = (store[i] ?? 0) > 0 ? (bound[i] ?? 0) : Math.min(free, bound[i] ?? 0);
      moved = Math.max(moved, Math.abs(next - old));
      p[i] = next;
    }
    if (moved < 1e-10) return p;
  }
  throw new Error('the grid did not settle');
}
