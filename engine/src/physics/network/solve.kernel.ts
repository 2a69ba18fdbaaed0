import type { CompiledNetwork } from './compiled.ts';
import { look } from './look.kernel.ts';
import { assemble, eliminate, substitute } from './matrix.kernel.ts';

/**
 * A solution begins without flows and pressures, with the friction of an ordinary duct and with straight laws, which
 * the first step is to solve.
 */
export function begin({ memory: m, regions, matrix, passages }: CompiledNetwork): void {
  const { ends, count } = passages;
  for (let k = 0, i = 4; k < matrix.size; k++, i += 6) m[i] = 0;
  for (let p = 0, x = regions.passages, c = 0, o = regions.laws; p < count; p++, x += 6, c += 4) {
    let along = 0;
    let growth = 0;
    for (const last = ends[c + 3]!; o < last; o += 21) {
      m[o + 14] = m[o + 17]!;
      m[o + 15] = 0;
      const steep = m[o + 2]! * m[o + 6]!;
      along += m[o + 2]! * m[o + 5]! + steep * m[o + 1]!;
      growth += steep * m[o]!;
    }
    m[x] = 0;
    m[x + 1] = m[ends[c]! + 4]! - m[ends[c + 1]! + 4]! - along;
    m[x + 2] = 1 / growth;
    m[x + 5] = 0;
  }
}

/** Flows of passages out of those of their links, given in the order of the network's links. */
export function takeFlows({ memory: m, laws }: CompiledNetwork, start: Float64Array): void {
  const { place, passage } = laws;
  for (let e = 0; e < place.length; e++) {
    const o = place[e]!;
    const share = m[o]!;
    if (share !== 0) m[passage[e]!] = (start[e]! - m[o + 1]!) / share;
  }
}

/** One Newton step, pressures and flows. Reports the slope of power along it at its beginning. */
export function step(net: CompiledNetwork): void {
  assemble(net);
  eliminate(net);
  substitute(net);
  const { memory: m, regions } = net;
  const { ends, count } = net.passages;
  let slope = 0;
  for (let p = 0, x = regions.passages, c = 0; p < count; p++, x += 6, c += 4) {
    const miss = m[x + 1]! + m[ends[c]! + 3]! - m[ends[c + 1]! + 3]!;
    const change = m[x + 2]! * miss;
    m[x + 5] = change;
    m[x] = m[x]! + change;
    slope += change * miss;
  }
  net.report[3] = slope;
}

/**
 * Newton on flows and pressures together, by whole steps. A step that overshoots is cut back to about where the power
 * lost along it is least: with elements that rise that is one place, and steps to it come down to the one answer.
 * Stops once the worst miss is within `share` of the largest pressure at work or `least` Pa. Gives the steps taken.
 */
export function iterate(net: CompiledNetwork, share: number, least: number, most: number): number {
  const { report } = net;
  for (let steps = 1; steps <= most; steps++) {
    step(net);
    look(net);
    // 1/√f of every duct has followed its flow by the third look.
    if (steps > 2 && report[0]! <= Math.max(least, share * report[1]!)) return steps;
    // The first step also closes the balance of air, which the start need not have done: never cut.
    if (steps > 1) cutBack(net);
  }
  return most;
}

function cutBack(net: CompiledNetwork): void {
  const { report } = net;
  const first = report[3]!;
  const { memory: m, regions } = net;
  const end = regions.passages + 6 * net.passages.count;
  let at = 1;
  let low = 0;
  let high = 1;
  let above = first;
  let below = report[2]!;
  for (let tries = 0; tries < 30; tries++) {
    const now = report[2]!;
    if (Math.abs(now) <= 0.5 * first || (now > 0 && at === 1)) return;
    if (now > 0) {
      low = at;
      above = now;
    } else {
      high = at;
      below = now;
    }
    const cut = low + (high - low) * Math.min(0.9, Math.max(0.1, above / (above - below)));
    for (let x = regions.passages; x < end; x += 6) m[x] = m[x]! + (cut - at) * m[x + 5]!;
    at = cut;
    look(net);
  }
}
