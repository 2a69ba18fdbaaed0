import type { CompiledNetwork } from './compiled.ts';
import { type FanCurve, fanPressure, fanSlope } from './fanCurve.ts';

/** Laws of all links that are no ducts, each at the flow of its passage. */
export function otherLaws({ memory: m, laws }: CompiledNetwork): void {
  const { others, fans } = laws;
  for (let x = 0; x < others.length; x += 3) {
    const o = others[x]!;
    otherLaw(m, o, m[o]! * m[others[x + 1]!]! + m[o + 1]!, fans[others[x + 2]!]);
  }
}

/** Law of a link that is no duct at a flow: its record `o` gets drop and slope, places 3 and 4. */
export function otherLaw(m: Float64Array, o: number, flow: number, fan: FanCurve | undefined): void {
  const kind = m[o + 20]!;
  if (kind === 1) powerLaw(m, o, flow);
  else if (kind === 2) oneWayLaw(m, o, flow);
  else {
    m[o + 3] = -fanPressure(fan!, flow);
    m[o + 4] = Math.max(-fanSlope(fan!, flow), 1e-6);
  }
}

function powerLaw(m: Float64Array, o: number, flow: number): void {
  const size = Math.abs(flow);
  const exponent = m[o + 8]!;
  const knee = m[o + 9]!;
  const eased = Math.max(size, knee);
  const secant = m[o + 7]! * (exponent === 2 ? eased : eased ** (exponent - 1));
  m[o + 3] = secant * flow;
  m[o + 4] = secant * (size > knee ? exponent : 1);
}

/** Flow is given by pressure, so pressure is sought: Newton on a rising function, kept between bounds. */
function oneWayLaw(m: Float64Array, o: number, flow: number): void {
  const openAt = 0.1; // Pa that hold the flap open
  const coefficient = m[o + 7]!;
  const power = 1 / m[o + 8]!;
  const leak = m[o + 10]!;
  let low = 0;
  let high = flow / leak;
  let p = high;
  let rate = leak;
  if (flow > 0) p = Math.min(high, Math.max(openAt, coefficient * flow ** m[o + 8]!));
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
  m[o + 3] = p;
  m[o + 4] = 1 / rate;
}
