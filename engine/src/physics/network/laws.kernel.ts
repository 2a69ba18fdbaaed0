import { fanPressure, fanSlope } from './fanCurve.ts';
import type { CompiledLaws } from './laws.ts';

/** Law of a link that is no duct, `e` its place among the laws: its record `o` gets drop and slope, places 3 and 4. */
export function otherLaw(l: CompiledLaws, e: number, o: number, flow: number): void {
  const n = l.numbers;
  const kind = l.kind[e]!;
  if (kind === 1) powerLaw(n, o, flow);
  else if (kind === 2) oneWayLaw(n, o, flow);
  else {
    const curve = l.fans[e]!;
    n[o + 3] = -fanPressure(curve, flow);
    n[o + 4] = Math.max(-fanSlope(curve, flow), 1e-6);
  }
}

function powerLaw(n: Float64Array, o: number, flow: number): void {
  const size = Math.abs(flow);
  const exponent = n[o + 8]!;
  const knee = n[o + 9]!;
  const eased = Math.max(size, knee);
  const secant = n[o + 7]! * (exponent === 2 ? eased : eased ** (exponent - 1));
  n[o + 3] = secant * flow;
  n[o + 4] = secant * (size > knee ? exponent : 1);
}

/** Flow is given by pressure, so pressure is sought: Newton on a rising function, kept between bounds. */
function oneWayLaw(n: Float64Array, o: number, flow: number): void {
  const openAt = 0.1; // Pa that hold the flap open
  const coefficient = n[o + 7]!;
  const power = 1 / n[o + 8]!;
  const leak = n[o + 10]!;
  let low = 0;
  let high = flow / leak;
  let p = high;
  let rate = leak;
  if (flow > 0) p = Math.min(high, Math.max(openAt, coefficient * flow ** n[o + 8]!));
  for (let i = 0; i < 60 && flow > 0; i++) {
    const t = Math.min(1, p / openAt);
    const open = (p / coefficient) ** power;
    const s = t * t * (3 - 2 * t);
    rate = leak + open * ((s * power) / p + (t < 1 ? (6 * t * (1 - t)) / openAt : 0));
    const over = leak * p + s * open - flow;
    if (Math.abs(over) <= 1e-15 * flow) break;
    if (over > 0) high = p;
    else low = p;
    const next = p - over / rate;
    p = next > low && next < high ? next : (low + high) / 2;
  }
  n[o + 3] = p;
  n[o + 4] = 1 / rate;
}
