import { factor, solveFactored } from './dense.kernel.ts';
import type { Layout, State } from './layout.ts';
import type { WeatherSteps } from './weatherSteps.ts';

/**
 * Takes the humidity of every zone through a step, kg of water for each kg of dry air: carried by the same air as the
 * heat, given off by people and cooking, taken up and given back by what stands in the room. A zone that is being cooled
 * is dried to its driest and no further; what that takes out stands in `dried`, kg/s.
 */
export function stepMoisture(l: Layout, s: State, w: WeatherSteps, step: number): void {
  const { zones } = l;
  s.work.vapourFixed.fill(0);
  s.dried.fill(0);
  solveVapour(l, s, w, step, false);
  let cooled = false;
  for (let z = 0; z < zones; z++) {
    if (!isCooled(l, s, z) || s.work.vapourRhs[z]! <= l.control.driest[z]!) continue;
    s.work.vapourFixed[z] = 1;
    cooled = true;
  }
  if (cooled) {
    solveVapour(l, s, w, step, true);
    for (let z = 0; z < zones; z++) if (s.work.vapourFixed[z]) s.dried[z] = surplus(l, s, w, step, z);
  }
  const dt = l.stepSeconds;
  for (let z = 0; z < zones; z++) {
    const now = s.work.vapourRhs[z]!;
    s.buffer[z] =
      (l.zone.buffer[z]! * s.buffer[z]! + dt * l.zone.bufferFlow[z]! * now) /
      (l.zone.buffer[z]! + dt * l.zone.bufferFlow[z]!);
    s.humidity[z] = now;
  }
}

function isCooled(l: Layout, s: State, z: number): boolean {
  for (let j = 0; j < l.systems; j++) if (s.heat[j]! < 0 && l.control.share[j * l.zones + z]! > 0) return true;
  return false;
}

/** kg/s for each kg/kg that a zone's air and, through it, its surfaces take to change within the step. */
function inertia(l: Layout, z: number): number {
  const { air, buffer, bufferFlow } = l.zone;
  const dt = l.stepSeconds;
  return air[z]! / dt + (buffer[z]! * bufferFlow[z]!) / (buffer[z]! + dt * bufferFlow[z]!);
}

/** kg/s into a zone that do not hang on the step's own humidities. */
function given(l: Layout, s: State, w: WeatherSteps, step: number, z: number): number {
  const { air, buffer, bufferFlow, vapour } = l.zone;
  const dt = l.stepSeconds;
  const hour = Math.floor(((step % l.stepsPerDay) * 24) / l.stepsPerDay);
  return (
    (air[z]! / dt) * s.humidity[z]! +
    ((buffer[z]! * bufferFlow[z]!) / (buffer[z]! + dt * bufferFlow[z]!)) * s.buffer[z]! +
    s.work.outdoorFlow[z]! * w.humidityRatio[step]! +
    vapour[z * 24 + hour]!
  );
}

function solveVapour(l: Layout, s: State, w: WeatherSteps, step: number, fixed: boolean): void {
  const { zones: n } = l;
  const { vapourMatrix: m, vapourRhs: r, exchange, outdoorFlow, vapourFixed } = s.work;
  m.fill(0);
  for (let z = 0; z < n; z++) {
    if (fixed && vapourFixed[z]) {
      m[z * n + z] = 1;
      r[z] = l.control.driest[z]!;
      continue;
    }
    let own = inertia(l, z) + outdoorFlow[z]!;
    for (let y = 0; y < n; y++) {
      const flow = exchange[z * n + y]!;
      if (flow === 0) continue;
      own += flow;
      m[z * n + y] = -flow;
    }
    m[z * n + z] = m[z * n + z]! + own;
    r[z] = given(l, s, w, step, z);
  }
  factor(m, n);
  solveFactored(m, n, r, 0);
}

/** kg/s more than a zone held at its driest can keep. */
function surplus(l: Layout, s: State, w: WeatherSteps, step: number, z: number): number {
  const { zones: n } = l;
  const { exchange, outdoorFlow, vapourRhs: x } = s.work;
  let left = given(l, s, w, step, z) - (inertia(l, z) + outdoorFlow[z]!) * x[z]!;
  for (let y = 0; y < n; y++) left += exchange[z * n + y]! * (x[y]! - x[z]!);
  return left;
}
