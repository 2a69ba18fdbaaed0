import type { CompiledNetwork } from './compile.ts';
import { look } from './look.kernel.ts';
import { eliminate, substitute } from './matrix.kernel.ts';

/** A solution begins without pressures, and with the friction of an ordinary duct. */
export function begin(net: CompiledNetwork): void {
  const { numbers: n } = net.laws;
  const { numbers: r } = net.passages;
  const { nodes, size } = net.matrix;
  for (let o = 0; o < n.length; o += 19) {
    n[o + 14] = n[o + 17]!;
    n[o + 15] = 0;
  }
  for (let x = 0; x < r.length; x += 6) {
    r[x] = 0;
    r[x + 5] = 0;
  }
  for (let k = 0, i = 0; k < size; k++, i += 6) nodes[i + 4] = 0;
}

/** Flows of passages out of those of their links, given in the order of the network's links. */
export function takeFlows(net: CompiledNetwork, start: Float64Array): void {
  const { place, passage, numbers: n } = net.laws;
  for (let i = 0; i < place.length; i++) {
    const e = place[i]!;
    const share = n[e * 19]!;
    if (share !== 0) net.passages.numbers[passage[e]! * 6] = (start[i]! - n[e * 19 + 1]!) / share;
  }
}

/** One Newton step, pressures and flows. Gives the slope of power along it at its beginning. */
export function step(net: CompiledNetwork): number {
  const { nodes } = net.matrix;
  const { numbers: r, ends, count } = net.passages;
  eliminate(net.matrix);
  substitute(net.matrix);
  let slope = 0;
  for (let p = 0, x = 0, c = 0; p < count; p++, x += 6, c += 4) {
    const miss = r[x + 1]! + nodes[ends[c]! + 3]! - nodes[ends[c + 1]! + 3]!;
    const change = r[x + 2]! * miss;
    r[x + 5] = change;
    r[x] = r[x]! + change;
    slope += change * miss;
  }
  return slope;
}

/**
 * Newton on flows and pressures together, by whole steps. A step that overshoots is cut back to about where the power
 * lost along it is least: with elements that rise that is one place, and steps to it come down to the one answer.
 * Stops once the worst miss is within `share` of the largest pressure at work or `least` Pa. Gives the steps taken.
 */
export function iterate(net: CompiledNetwork, share: number, least: number, most: number): number {
  const { report } = net;
  for (let steps = 1; steps <= most; steps++) {
    const slope = step(net);
    look(net, false);
    // 1/√f of every duct has followed its flow by the third look.
    if (steps > 2 && report[0]! <= Math.max(least, share * report[1]!)) return steps;
    // The first step also closes the balance of air, which the start need not have done: never cut.
    if (steps > 1) cutBack(net, slope);
  }
  return most;
}

function cutBack(net: CompiledNetwork, first: number): void {
  const { report } = net;
  const r = net.passages.numbers;
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
    for (let x = 0; x < r.length; x += 6) r[x] = r[x]! + (cut - at) * r[x + 5]!;
    at = cut;
    look(net, false);
  }
}
