import { gasConstant } from '../air/index.ts';
import { heatOfAir } from '../flow/index.ts';
import { stefanBoltzmann } from '../sun/index.ts';
import { factor, solveFactored } from './dense.kernel.ts';
import { setDucts } from './ducts.kernel.ts';
import { inOpenAir, inZone, isGiven, type Layout, type State } from './layout.ts';
import { factorVapour } from './moisture.kernel.ts';
import type { WeatherSteps } from './weatherSteps.ts';

const kelvin = 273.15;

/**
 * Sets what holds for one row of weather: films by wind and by the way heat flows, radiation by the temperatures just
 * reached, air flows by wind and stack; then the balance of all nodes, factored, and what each system's watt does.
 */
export function setCoefficients(l: Layout, s: State, w: WeatherSteps, step: number): void {
  const row = Math.floor(step / l.perRow);
  setFilms(l, s, w, row, step);
  setAirFlows(l, s, w, row, step);
  if (l.ducts.count > 0) setDucts(l, s);
  setCarried(l, s);
  setMost(l, s, row);
  setBalance(l, s);
  factor(s.work.matrix, 2 * l.zones);
  setResponses(l, s);
  factorVapour(l, s);
  s.work.heldOf[0] = -1;
  s.work.heldOf[1] = row;
}

/** Grows towards +1 where warm air rises off the face and towards -1 where it lies still; half way at one degree. */
const rising = (difference: number): number => difference / (1 + Math.abs(difference));

function setFilms(l: Layout, s: State, w: WeatherSteps, row: number, step: number): void {
  const { slab: b, zone } = l;
  const { work: k, t } = s;
  const wind = w.wind[row]!;
  const air = w.outdoor[step]! + kelvin;
  const sky = w.sky[step]! + kelvin;
  for (let z = 0; z < l.zones; z++) k.radiation[z] = zone.wideRange[z] ? radiationOf(t[2 * z + 1]!) : 1;
  for (let i = 0; i < l.slabs; i++) {
    const z1 = b.zone1[i]!;
    k.conv1[i] = b.convection1[i]! + b.swing1[i]! * rising(s.face1[i]! - t[2 * z1]!);
    k.rad1[i] = b.radiation1[i]! * k.radiation[z1]!;
    if (b.kind2[i] === inZone) {
      const z2 = b.zone2[i]!;
      k.conv2[i] = b.convection2[i]! + b.swing2[i]! * rising(s.face2[i]! - t[2 * z2]!);
      k.rad2[i] = b.radiation2[i]! * k.radiation[z2]!;
    } else if (b.kind2[i] === inOpenAir) {
      const face = s.face2[i]! + kelvin;
      k.air2[i] =
        b.film[i]! +
        b.filmByWind[i]! * wind +
        b.toAround[i]! * stefanBoltzmann * (face + air) * (face * face + air * air);
      k.sky2[i] = b.toSky[i]! * stefanBoltzmann * (face + sky) * (face * face + sky * sky);
    }
    invert(l, s, i);
  }
}

/** Radiation between faces against that at 20 °C, by the cube of the absolute temperature. */
function radiationOf(t: number): number {
  const ratio = (t + kelvin) / (20 + kelvin);
  return ratio * ratio * ratio;
}

/** The two faces of a slab answer to what surrounds them through the inverse of a two by two balance. */
function invert(l: Layout, s: State, i: number): void {
  const { slab: b } = l;
  const { work: k } = s;
  const kind = b.kind2[i];
  const outer = kind === inZone ? k.conv2[i]! + k.rad2[i]! : kind === inOpenAir ? k.air2[i]! + k.sky2[i]! : 0;
  const a = b.near[i]! + k.conv1[i]! + k.rad1[i]!;
  const c = b.far[i]! + outer;
  const x = b.across[i]!;
  if (kind === isGiven) {
    // The other face is at the given temperature itself.
    k.inverse11[i] = 1 / a;
    k.inverse12[i] = x / a;
    k.inverse22[i] = 0;
    return;
  }
  const determinant = a * c - x * x;
  k.inverse11[i] = c / determinant;
  k.inverse12[i] = x / determinant;
  k.inverse22[i] = a / determinant;
}

function setAirFlows(l: Layout, s: State, w: WeatherSteps, row: number, step: number): void {
  const { air: a, zones } = l;
  const { work: k, t } = s;
  const hour = Math.floor(((step % l.stepsPerDay) * 24) / l.stepsPerDay);
  const outdoor = w.outdoor[step]!;
  const density = a.pressure / (gasConstant * (outdoor + kelvin));
  k.exchange.fill(0);
  for (let z = 0; z < zones; z++) k.outdoorFlow[z] = a.constant[z]! + a.fan[z * 24 + hour]!;
  for (let i = 0; i < a.leaks; i++) {
    let inside = 0;
    for (let z = 0; z < zones; z++) inside += a.leakShare[i * zones + z]! * t[2 * z]!;
    const stack = a.leakStack[i]! * Math.abs(inside - outdoor) ** a.leakExponent[i]!;
    const wind = a.leakWind[i]! * w.wind[row]! ** (2 * a.leakExponent[i]!);
    const flow = density * Math.sqrt(stack * stack + wind * wind);
    const up = a.leakUpZone[i]!;
    for (let z = 0; z < zones; z++) {
      const mine = flow * a.leakShare[i * zones + z]!;
      k.outdoorFlow[z] = k.outdoorFlow[z]! + mine;
      if (up >= 0) k.exchange[up * zones + z] = k.exchange[up * zones + z]! + mine * a.leakUpShare[i]!;
    }
  }
  for (let i = 0; i < a.passages; i++) {
    const from = a.passageFrom[i]!;
    const to = a.passageTo[i]!;
    const flow =
      density * (a.passageSteady[i]! + a.passageBuoyant[i]! * Math.sqrt(Math.abs(t[2 * from]! - t[2 * to]!)));
    k.exchange[from * zones + to] = k.exchange[from * zones + to]! + flow;
    k.exchange[to * zones + from] = k.exchange[to * zones + from]! + flow;
  }
}

/** W/K that air, and the walls of ducts, carry from one zone into another. */
function setCarried(l: Layout, s: State): void {
  const { exchange, walls, carries } = s.work;
  const pairs = l.zones * l.zones;
  for (let p = 0; p < pairs; p++) carries[p] = heatOfAir * exchange[p]! + walls[p]!;
}

/** W that each system can give in this row. */
function setMost(l: Layout, s: State, row: number): void {
  const { mostRows, heatMost, coolMost } = l.control;
  const at = mostRows === 1 ? 0 : row;
  for (let j = 0; j < l.systems; j++) {
    s.work.heatMost[j] = heatMost[j * mostRows + at]!;
    s.work.coolMost[j] = coolMost[j * mostRows + at]!;
  }
}

/** W/K between the nodes: what each takes for its own degree, less what its neighbours' degrees give it. */
function setBalance(l: Layout, s: State): void {
  const { slab: b, zones } = l;
  const { work: k } = s;
  const n = 2 * zones;
  const m = k.matrix;
  m.fill(0);
  for (let z = 0; z < zones; z++) {
    let own = l.zone.capacity[z]! / l.stepSeconds + heatOfAir * k.outdoorFlow[z]!;
    for (let y = 0; y < zones; y++) {
      const carried = k.carries[z * zones + y]!;
      if (carried === 0) continue;
      own += carried;
      m[2 * z * n + 2 * y] = m[2 * z * n + 2 * y]! - carried;
    }
    m[2 * z * n + 2 * z] = m[2 * z * n + 2 * z]! + own;
  }
  const { conv1, rad1, conv2, rad2, inverse11, inverse12, inverse22 } = k;
  for (let i = 0; i < l.slabs; i++) {
    const at1 = 2 * b.zone1[i]!;
    addFilm(m, n, at1, conv1, rad1, i);
    addFace(m, n, at1, at1, conv1, rad1, conv1, rad1, inverse11, i);
    if (b.kind2[i] !== inZone) continue;
    const at2 = 2 * b.zone2[i]!;
    addFilm(m, n, at2, conv2, rad2, i);
    addFace(m, n, at2, at2, conv2, rad2, conv2, rad2, inverse22, i);
    addFace(m, n, at1, at2, conv1, rad1, conv2, rad2, inverse12, i);
    addFace(m, n, at2, at1, conv2, rad2, conv1, rad1, inverse12, i);
  }
}

/** What a zone's air and radiation give a slab's face. Arrays and places are handed on, since plain numbers would be boxed. */
function addFilm(m: Float64Array, n: number, at: number, conv: Float64Array, rad: Float64Array, slab: number): void {
  m[at * n + at] = m[at * n + at]! + conv[slab]!;
  m[(at + 1) * n + at + 1] = m[(at + 1) * n + at + 1]! + rad[slab]!;
}

/** What comes back through the face from the nodes at `j`, as the slab's inverse `g` lets it. */
function addFace(
  m: Float64Array,
  n: number,
  i: number,
  j: number,
  conv: Float64Array,
  rad: Float64Array,
  convBack: Float64Array,
  radBack: Float64Array,
  g: Float64Array,
  slab: number,
): void {
  const byAir = conv[slab]! * g[slab]!;
  const byRadiation = rad[slab]! * g[slab]!;
  m[i * n + j] = m[i * n + j]! - byAir * convBack[slab]!;
  m[i * n + j + 1] = m[i * n + j + 1]! - byAir * radBack[slab]!;
  m[(i + 1) * n + j] = m[(i + 1) * n + j]! - byRadiation * convBack[slab]!;
  m[(i + 1) * n + j + 1] = m[(i + 1) * n + j + 1]! - byRadiation * radBack[slab]!;
}

/** K at every node for a watt of each system. */
function setResponses(l: Layout, s: State): void {
  const { zones, systems } = l;
  const n = 2 * zones;
  const { response, matrix, share } = s.work;
  for (let j = 0; j < systems; j++) {
    for (let z = 0; z < zones; z++) {
      response[j * n + 2 * z] = share[j * zones + z]!;
      response[j * n + 2 * z + 1] = 0;
    }
    solveFactored(matrix, n, response, j * n);
  }
}
