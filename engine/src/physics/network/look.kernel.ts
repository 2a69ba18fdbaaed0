import type { CompiledNetwork } from './compile.ts';
import { otherLaw } from './laws.kernel.ts';
import type { Matrix } from './matrix.ts';

/**
 * Looks at every passage at its flow: pressure lost, the miss against the pressures at its ends, and, straightened
 * there, its part in the balance of air at the two nodes, which makes the matrix of the next Newton step. `straight`:
 * laws of a first guess. Fills the report: worst miss, largest drop, slope of power along the last step. Records: see
 * `laws.ts` (19 numbers) and `matrix.ts` (6 a passage, 6 a node, 4 ends).
 */
export function look(net: CompiledNetwork, straight: boolean): void {
  passageLaws(net, straight);
  const { numbers: r, ends, count } = net.passages;
  const { nodes, upper, lower, symmetric } = net.matrix;
  clear(net.matrix);
  let worst = 0;
  let largest = 0;
  let power = 0;
  for (let p = 0, x = 0, c = 0; p < count; p++, x += 6, c += 4) {
    const along = r[x + 1]!;
    const g = 1 / r[x + 2]!;
    const i = ends[c]!;
    const j = ends[c + 1]!;
    const t = ends[c + 2]!;
    const a = r[x + 3]!;
    const b = r[x + 4]!;
    const miss = nodes[i + 4]! - nodes[j + 4]! - along;
    const y = r[x]! + g * miss;
    r[x + 1] = miss;
    r[x + 2] = g;
    nodes[i] = nodes[i]! + a * g;
    nodes[i + 1] = nodes[i + 1]! - a * y;
    nodes[j] = nodes[j]! + b * g;
    nodes[j + 1] = nodes[j + 1]! + b * y;
    upper[t] = upper[t]! - g * (i < j ? a : b);
    if (!symmetric) lower[t] = lower[t]! - g * (i < j ? b : a);
    const size = Math.abs(miss);
    // Written so that what is not a number counts as a miss.
    if (!(size <= worst)) worst = size;
    if (along > largest) largest = along;
    if (-along > largest) largest = -along;
    power += r[x + 5]! * miss;
  }
  net.report[0] = worst;
  net.report[1] = largest;
  net.report[2] = power;
}

/**
 * Pressure lost in each passage and its growth with flow, the sums of its links' laws, left in places 1 and 2.
 *
 * Ducts: Darcy with Colebrook where turbulent, 64/Re below Re 2300, a straight line in Re between. Each look takes one
 * Newton step on Colebrook's 1/√f from that of the look before: as flows settle it is exact to rounding. A logarithm
 * near the one last taken comes from its series.
 */
function passageLaws(net: CompiledNetwork, straight: boolean): void {
  const { numbers: n, kind } = net.laws;
  const { numbers: r, ends, count } = net.passages;
  for (let p = 0, x = 0, c = 0, e = 0; p < count; p++, x += 6, c += 4) {
    const flow = r[x]!;
    let along = 0;
    let growth = 0;
    for (const last = ends[c + 7]!; e < last; e++) {
      const o = e * 19;
      const q = n[o]! * flow + n[o + 1]!;
      const size = Math.abs(q);
      const re = n[o + 9]! * size;
      let drop = n[o + 5]! + n[o + 6]! * q;
      let slope = n[o + 6]!;
      if (!straight) {
        if (kind[e]! > 0) {
          otherLaw(net.laws, e, o, q);
          drop = n[o + 3]!;
          slope = n[o + 4]!;
        } else if (re <= 2300) {
          const minor = n[o + 8]! * size;
          drop = (n[o + 10]! + minor) * q;
          slope = n[o + 10]! + 2 * minor;
        } else if (re < n[o + 18]!) {
          const bend = n[o + 12]! * re;
          const all = n[o + 11]! + bend + n[o + 8]!;
          drop = all * size * q;
          slope = size * (2 * all + bend);
        } else {
          const bels = 0.8685889638065037; // 2 / ln 10
          const z = 2.51 / re;
          const root = n[o + 14]!;
          const inner = n[o + 13]! + z * root;
          const d = inner * n[o + 15]! - 1;
          let log = n[o + 16]! + lnOnePlus(d);
          if (d > 0.03 || d < -0.03) {
            log = Math.log(inner);
            n[o + 15] = 1 / inner;
            n[o + 16] = log;
          }
          const w = 1 / (inner + bels * z);
          const next = root - (root + bels * log) * inner * w;
          n[o + 14] = next;
          const friction = n[o + 7]! / (next * next);
          const all = friction + n[o + 8]!;
          drop = all * size * q;
          slope = 2 * size * (all - friction * bels * z * w);
        }
      }
      n[o + 3] = drop;
      along += n[o + 2]! * drop;
      growth += n[o + 2]! * n[o]! * slope;
    }
    r[x + 1] = along;
    r[x + 2] = growth;
  }
}

/** ln(1 + d) for |d| up to 0.03, to 1e-15. */
const lnOnePlus = (d: number): number =>
  d *
  (1 +
    d *
      (-1 / 2 +
        d *
          (1 / 3 +
            d * (-1 / 4 + d * (1 / 5 + d * (-1 / 6 + d * (1 / 7 + d * (-1 / 8 + d * (1 / 9 - d * (1 / 10))))))))));

function clear({ nodes, upper, lower, symmetric }: Matrix): void {
  for (let t = 0; t < upper.length; t++) upper[t] = 0;
  for (let i = 0; i < nodes.length; i += 6) {
    nodes[i] = 0;
    nodes[i + 1] = -nodes[i + 5]!;
  }
  if (!symmetric) lower.fill(0);
}
