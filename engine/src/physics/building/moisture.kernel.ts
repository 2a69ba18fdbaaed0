import { factor, solveFactored } from './dense.kernel.ts';
import { setDrying } from './ducts.kernel.ts';
import type { Layout, State } from './layout.ts';
import type { WeatherSteps } from './weatherSteps.ts';

/**
 * Takes the humidity of every zone through a step, kg of water for each kg of dry air: carried by the same air as the
 * heat, given off by people and cooking, taken up and given back by what stands in the room. A zone that is being cooled
 * is dried to its driest and no further, or, behind ducts, as its coil dries it; what that takes out stands in `dried`,
 * kg/s.
 */
export function stepMoisture(l: Layout, s: State, w: WeatherSteps, step: number): void {
  const { zones } = l;
  const { vapourRhs, vapourMatrix } = s.work;
  s.dried.fill(0);
  setGiven(l, s, w, step, vapourRhs);
  solveFactored(vapourMatrix, zones, vapourRhs, 0);
  if (cools(s)) dryCooled(l, s, w, step);
  const { kept } = l.zone;
  for (let z = 0; z < zones; z++) {
    const now = vapourRhs[z]!;
    s.buffer[z] = now + kept[z]! * (s.buffer[z]! - now);
    s.humidity[z] = now;
  }
}

/** Marks the zones that cooling dries, and dries them. */
function dryCooled(l: Layout, s: State, w: WeatherSteps, step: number): void {
  const { driest } = l.control;
  const { vapourRhs, vapourFixed, drying, coilRatio } = s.work;
  if (l.ducts.count > 0) setDrying(l, s);
  let wet = 0;
  for (let z = 0; z < l.zones; z++) {
    vapourFixed[z] = isCooled(l, s, z) && vapourRhs[z]! > driest[z]! ? held : 0;
    if (drying[z]! > 0 && vapourRhs[z]! > coilRatio[z]!) vapourFixed[z] = dryingUp;
    wet += vapourFixed[z]!;
  }
  if (wet > 0) dryTo(l, s, w, step);
}

/** What cooling does to a zone's vapour: holds it at its driest, or mixes in air that has touched the coil. */
const held = 1;
const dryingUp = 2;

/** Dries the marked zones, and finds what has to be taken out of them for it. */
function dryTo(l: Layout, s: State, w: WeatherSteps, step: number): void {
  const { zones: n } = l;
  const { airFlow, followFlow } = l.zone;
  const { vapourDry: m, vapourRhs: r, vapourFixed, vapourGiven: given, drying, coilRatio } = s.work;
  setVapourBalance(l, s, m);
  setGiven(l, s, w, step, given);
  for (let z = 0; z < n; z++) {
    r[z] = given[z]!;
    if (vapourFixed[z] === dryingUp) {
      m[z * n + z] = m[z * n + z]! + drying[z]!;
      r[z] = r[z]! + drying[z]! * coilRatio[z]!;
    }
    if (vapourFixed[z] !== held) continue;
    for (let y = 0; y < n; y++) m[z * n + y] = y === z ? 1 : 0;
    r[z] = l.control.driest[z]!;
  }
  factor(m, n);
  solveFactored(m, n, r, 0);
  for (let z = 0; z < n; z++) {
    if (!vapourFixed[z]) continue;
    let left = given[z]! - (airFlow[z]! + followFlow[z]! + s.work.outdoorFlow[z]!) * r[z]!;
    for (let y = 0; y < n; y++) left += s.work.exchange[z * n + y]! * (r[y]! - r[z]!);
    s.dried[z] = left;
  }
}

/** Whether a system without a duct system cools the zone. */
function isCooled(l: Layout, s: State, z: number): boolean {
  for (let j = 0; j < l.systems; j++)
    if (s.heat[j]! < 0 && l.ducts.ofSystem[j]! < 0 && l.control.share[j * l.zones + z]! > 0) return true;
  return false;
}

/** Whether any system cools. */
function cools({ heat }: State): boolean {
  for (let j = 0; j < heat.length; j++) if (heat[j]! < 0) return true;
  return false;
}

/** kg/s into every zone that do not hang on the step's own humidities, into `into`. */
function setGiven(l: Layout, s: State, w: WeatherSteps, step: number, into: Float64Array): void {
  const { airFlow, followFlow, vapour } = l.zone;
  const { humidity, buffer } = s;
  const { outdoorFlow } = s.work;
  const hour = Math.floor(((step % l.stepsPerDay) * 24) / l.stepsPerDay);
  const outdoor = w.humidityRatio[step]!;
  for (let z = 0; z < l.zones; z++)
    into[z] =
      airFlow[z]! * humidity[z]! + followFlow[z]! * buffer[z]! + outdoorFlow[z]! * outdoor + vapour[z * 24 + hour]!;
}

/** Lays out and factors the balance of vapour for the air flows of a row. */
export function factorVapour(l: Layout, s: State): void {
  setVapourBalance(l, s, s.work.vapourMatrix);
  factor(s.work.vapourMatrix, l.zones);
}

function setVapourBalance(l: Layout, s: State, m: Float64Array): void {
  const { zones: n } = l;
  const { airFlow, followFlow } = l.zone;
  const { exchange, outdoorFlow } = s.work;
  for (let z = 0; z < n; z++) {
    let own = airFlow[z]! + followFlow[z]! + outdoorFlow[z]!;
    for (let y = 0; y < n; y++) {
      const flow = exchange[z * n + y]!;
      own += flow;
      m[z * n + y] = -flow;
    }
    m[z * n + z] = m[z * n + z]! + own;
  }
}
