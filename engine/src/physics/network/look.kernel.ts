import type { CompiledNetwork } from './compiled.ts';
import { otherLaws } from './laws.kernel.ts';

/**
 * Looks at every passage at its flow: by how much the pressure lost in it misses that between its ends, and its
 * conductance there, places 1 and 2 of its record. Fills the report: worst miss, largest drop, slope of power along the
 * last step. Records: see `memory.ts` (6 numbers a node, 6 a passage, 21 a law).
 *
 * Ducts: Darcy with Colebrook where turbulent, 64/Re below Re 2300, a straight line in Re between. Each look takes one
 * Newton step on Colebrook's 1/√f from that of the look before: as flows settle it is exact to rounding.
 */
export function look(net: CompiledNetwork): void {
  otherLaws(net);
  const { memory: m, regions, report } = net;
  const { ends, count } = net.passages;
  let worst = 0;
  let largest = 0;
  let power = 0;
  for (let p = 0, x = regions.passages, c = 0, o = regions.laws; p < count; p++, x += 6, c += 4) {
    const flow = m[x]!;
    let along = 0;
    let growth = 0;
    for (const last = ends[c + 3]!; o < last; o += 21) {
      const share = m[o]!;
      const q = share * flow + m[o + 1]!;
      const size = Math.abs(q);
      let drop = m[o + 3]!;
      let slope = m[o + 4]!;
      if (size >= m[o + 19]!) {
        const bels = 0.8685889638065037; // 2 / ln 10
        const viscous = m[o + 9]!;
        const root = m[o + 14]!;
        // Colebrook's argument is roughness / 3.7 D + 2.51 / (Re √f); here it is times the flow, as is the last one.
        const inner = m[o + 13]! * size + viscous * root;
        const before = m[o + 15]! * size;
        const near = (inner - before) / (inner + before);
        // ln (inner / before) = 2 artanh near, by its series to 5e-16 while near; by itself beyond.
        const t = near * near;
        const series = 1 + t * (1 / 3 + t * (1 / 5) + t * t * (1 / 7 + t * (1 / 9)));
        let log = m[o + 16]! + 2 * near * series;
        if (near > 0.05 || near < -0.05) {
          log = Math.log(inner / size);
          m[o + 15] = inner / size;
          m[o + 16] = log;
        }
        const w = 1 / (inner + bels * viscous);
        const next = root - (root + bels * log) * inner * w;
        m[o + 14] = next;
        const friction = m[o + 7]! / (next * next);
        const all = friction + m[o + 8]!;
        drop = all * size * q;
        slope = 2 * size * (all - friction * bels * viscous * w);
      } else if (m[o + 20] === 0) {
        const minor = m[o + 8]!;
        const laminar = m[o + 10]!;
        if (size <= m[o + 18]!) {
          drop = (laminar + minor * size) * q;
          slope = laminar + 2 * minor * size;
        } else {
          const bend = m[o + 12]! * size;
          const all = m[o + 11]! + bend + minor;
          drop = all * size * q;
          slope = size * (2 * all + bend);
        }
      }
      m[o + 3] = drop;
      along += m[o + 2]! * drop;
      growth += m[o + 2]! * share * slope;
    }
    const miss = m[ends[c]! + 4]! - m[ends[c + 1]! + 4]! - along;
    m[x + 1] = miss;
    m[x + 2] = 1 / growth;
    // Written so that what is not a number counts as a miss.
    if (!(Math.abs(miss) <= worst)) worst = Math.abs(miss);
    if (Math.abs(along) > largest) largest = Math.abs(along);
    power += m[x + 5]! * miss;
  }
  report[0] = worst;
  report[1] = largest;
  report[2] = power;
}
