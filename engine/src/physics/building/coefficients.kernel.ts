import { gasConstant } from '../air/index.ts';
import { heatOfAir } from '../flow/index.ts';
import { stefanBoltzmann } from '../sun/index.ts';
import { setDucts } from './ducts.kernel.ts';
import { inOpenAir, inZone, isGiven, type Layout, type State } from './layout.ts';
import { factorVapour } from './moisture.kernel.ts';
import { air2, conv1, conv2, inverse11, inverse12, inverse22, rad1, rad2, sky2, slabSlots } from './slabSlots.ts';
import type { WeatherSteps } from './weatherSteps.ts';
import { factorZones, solveZones } from './zones.kernel.ts';

const kelvin = 273.15;

/**
 * Sets what holds for one row of weather: films by wind and by the way heat flows, radiation by the temperatures just
 * reached, air flows by wind and stack; then the balance of all nodes, factored, and what each system's watt does.
 */
export function setCoefficients(l: Layout, s: State, w: WeatherSteps, step: number): void {
  const row = Math.floor(step / l.perRow);
  setFilms(l, s, w, row, step);
  setInverses(l, s);
  setAirFlows(l, s, w, row, step);
  if (l.ducts.count > 0) setDucts(l, s);
  setCarried(l, s);
  setMost(l, s, row);
  setBalance(l, s);
  factorZones(s.work.matrix, 2 * l.zones, l.order);
  setResponses(l, s);
  factorVapour(l, s);
  s.work.heldOf[0] = -1;
  s.work.heldOf[1] = row;
}

/** Grows towards +1 where warm air rises off the face and towards -1 where it lies still; half way at one degree. */
const rising = (difference: number): number => difference / (1 + Math.abs(difference));

function setFilms(l: Layout, s: State, w: WeatherSteps, row: number, step: number): void {
  const { slab, zone, slabs } = l;
  const { zone1, kind2, zone2, convection1, swing1, radiation1, convection2, swing2, radiation2 } = slab;
  const { film, filmByWind, toAround, toSky } = slab;
  const { work, t, face1, face2 } = s;
  const { radiation, slab: own } = work;
  const wind = w.wind[row]!;
  const air = w.outdoor[step]! + kelvin;
  const sky = w.sky[step]! + kelvin;
  for (let z = 0; z < l.zones; z++) radiation[z] = zone.wideRange[z] ? radiationOf(t[2 * z + 1]!) : 1;
  for (let i = 0; i < slabs; i++) {
    const at = i * slabSlots;
    const z1 = zone1[i]!;
    const kind = kind2[i]!;
    own[at + conv1] = convection1[i]! + swing1[i]! * rising(face1[i]! - t[2 * z1]!);
    own[at + rad1] = radiation1[i]! * radiation[z1]!;
    if (kind === inZone) {
      const z2 = zone2[i]!;
      own[at + conv2] = convection2[i]! + swing2[i]! * rising(face2[i]! - t[2 * z2]!);
      own[at + rad2] = radiation2[i]! * radiation[z2]!;
    } else if (kind === inOpenAir) {
      const face = face2[i]! + kelvin;
      const square = face * face;
      own[at + air2] =
        film[i]! + filmByWind[i]! * wind + toAround[i]! * stefanBoltzmann * (face + air) * (square + air * air);
      own[at + sky2] = toSky[i]! * stefanBoltzmann * (face + sky) * (square + sky * sky);
    }
  }
}

/** Radiation between faces against that at 20 °C, by the cube of the absolute temperature. */
function radiationOf(t: number): number {
  const ratio = (t + kelvin) / (20 + kelvin);
  return ratio * ratio * ratio;
}

/** The two faces of a slab answer to what surrounds them through the inverse of a two by two balance. */
function setInverses({ slab, slabs }: Layout, { work }: State): void {
  const { near, far, across, kind2 } = slab;
  const { slab: own } = work;
  for (let i = 0; i < slabs; i++) {
    const at = i * slabSlots;
    const kind = kind2[i]!;
    const a = near[i]! + own[at + conv1]! + own[at + rad1]!;
    const x = across[i]!;
    if (kind === isGiven) {
      // The other face is at the given temperature itself.
      own[at + inverse11] = 1 / a;
      own[at + inverse12] = x / a;
      own[at + inverse22] = 0;
      continue;
    }
    const outer = kind === inZone ? own[at + conv2]! + own[at + rad2]! : own[at + air2]! + own[at + sky2]!;
    const c = far[i]! + outer;
    const whole = 1 / (a * c - x * x);
    own[at + inverse11] = c * whole;
    own[at + inverse12] = x * whole;
    own[at + inverse22] = a * whole;
  }
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
    const row = 2 * z * n;
    for (let y = 0; y < zones; y++) {
      const carried = k.carries[z * zones + y]!;
      if (carried === 0) continue;
      own += carried;
      m[row + 2 * y] = m[row + 2 * y]! - carried;
    }
    m[row + 2 * z] = m[row + 2 * z]! + own;
  }
  for (let i = 0; i < l.slabs; i++) {
    const at = i * slabSlots;
    const node1 = 2 * b.zone1[i]!;
    addFace(m, n, node1, k.slab, at + conv1, at + inverse11);
    if (b.kind2[i] !== inZone) continue;
    const node2 = 2 * b.zone2[i]!;
    addFace(m, n, node2, k.slab, at + conv2, at + inverse22);
    addThrough(m, n, node1, node2, k.slab, at);
  }
}

/**
 * What a zone's air and radiation give a face, by the films at `films`, less what comes back to them through it, as the
 * slab's inverse lets it. Arrays and places are handed on, since plain numbers would be boxed.
 */
function addFace(m: Float64Array, n: number, node: number, own: Float64Array, films: number, inverse: number): void {
  const air = own[films]!;
  const radiant = own[films + 1]!;
  const back = own[inverse]!;
  const mixed = air * back * radiant;
  const at = node * n + node;
  m[at] = m[at]! + (air - air * back * air);
  m[at + 1] = m[at + 1]! - mixed;
  m[at + n] = m[at + n]! - mixed;
  m[at + n + 1] = m[at + n + 1]! + (radiant - radiant * back * radiant);
}

/** What two zones give each other through the slab between them, whose numbers begin at `at`. */
function addThrough(m: Float64Array, n: number, node1: number, node2: number, own: Float64Array, at: number): void {
  const air = own[at + conv1]! * own[at + inverse12]!;
  const radiant = own[at + rad1]! * own[at + inverse12]!;
  const airs = air * own[at + conv2]!;
  const airToRadiant = air * own[at + rad2]!;
  const radiantToAir = radiant * own[at + conv2]!;
  const radiants = radiant * own[at + rad2]!;
  const there = node1 * n + node2;
  const back = node2 * n + node1;
  m[there] = m[there]! - airs;
  m[there + 1] = m[there + 1]! - airToRadiant;
  m[there + n] = m[there + n]! - radiantToAir;
  m[there + n + 1] = m[there + n + 1]! - radiants;
  m[back] = m[back]! - airs;
  m[back + 1] = m[back + 1]! - radiantToAir;
  m[back + n] = m[back + n]! - airToRadiant;
  m[back + n + 1] = m[back + n + 1]! - radiants;
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
    solveZones(matrix, n, l.order, response, j * n);
  }
}
