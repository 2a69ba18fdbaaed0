import { gasConstant } from '../air/index.ts';
import { heatOfAir } from '../flow/index.ts';
import { stefanBoltzmann } from '../sun/index.ts';
import { setBalance, setResponses } from './balance.kernel.ts';
import { setDucts } from './ducts.kernel.ts';
import type { Layout, State } from './layout.ts';
import { factorVapour } from './moisture.kernel.ts';
import {
  across,
  conv1,
  conv2,
  convection1,
  convection2,
  face1,
  face2,
  far,
  film,
  filmByWind,
  inverse11,
  inverse12,
  inverse22,
  near,
  rad1,
  rad2,
  radiation1,
  radiation2,
  slabSlots,
  swing1,
  swing2,
  toAround,
  toSky,
} from './slabSlots.ts';
import type { WeatherSteps } from './weatherSteps.ts';
import { factorZones } from './zones.kernel.ts';

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
  factorZones(s.work.matrix, l.order);
  setResponses(l, s);
  factorVapour(l, s);
  s.work.heldOf[0] = -1;
  s.work.heldOf[1] = row;
}

/** Grows towards +1 where warm air rises off the face and towards -1 where it lies still; half way at one degree. */
const rising = (difference: number): number => difference / (1 + Math.abs(difference));

function setFilms(l: Layout, s: State, w: WeatherSteps, row: number, step: number): void {
  const { zone } = l;
  const { zone1, zone2, outdoors, given } = l.slab;
  const { t, slab } = s;
  const { radiation } = s.work;
  for (let z = 0; z < l.zones; z++) radiation[z] = zone.wideRange[z] ? radiationOf(t[2 * z + 1]!) : 1;
  let at = 0;
  for (let i = 0; i < l.slabs; i++) {
    const z = zone1[i]!;
    slab[at + conv1] = slab[at + convection1]! + slab[at + swing1]! * rising(slab[at + face1]! - t[2 * z]!);
    slab[at + rad1] = slab[at + radiation1]! * radiation[z]!;
    at += slabSlots;
  }
  at = 0;
  for (let i = 0; i < outdoors; i++) {
    const z = zone2[i]!;
    slab[at + conv2] = slab[at + convection2]! + slab[at + swing2]! * rising(slab[at + face2]! - t[2 * z]!);
    slab[at + rad2] = slab[at + radiation2]! * radiation[z]!;
    at += slabSlots;
  }
  const wind = w.wind[row]!;
  const air = w.outdoor[step]! + kelvin;
  const sky = w.sky[step]! + kelvin;
  for (let i = outdoors; i < given; i++) {
    const face = slab[at + face2]! + kelvin;
    const square = face * face;
    const around = stefanBoltzmann * (face + air) * (square + air * air);
    slab[at + conv2] = slab[at + film]! + slab[at + filmByWind]! * wind + slab[at + toAround]! * around;
    slab[at + rad2] = slab[at + toSky]! * stefanBoltzmann * (face + sky) * (square + sky * sky);
    at += slabSlots;
  }
}

/** Radiation between faces against that at 20 °C, by the cube of the absolute temperature. */
function radiationOf(t: number): number {
  const ratio = (t + kelvin) / (20 + kelvin);
  return ratio * ratio * ratio;
}

/** The two faces of a slab answer to what surrounds them through the inverse of a two by two balance. */
function setInverses({ slab: of, slabs }: Layout, { slab }: State): void {
  let at = 0;
  for (let i = 0; i < of.given; i++) {
    const a = slab[at + near]! + slab[at + conv1]! + slab[at + rad1]!;
    const c = slab[at + far]! + slab[at + conv2]! + slab[at + rad2]!;
    const x = slab[at + across]!;
    const whole = 1 / (a * c - x * x);
    slab[at + inverse11] = c * whole;
    slab[at + inverse12] = x * whole;
    slab[at + inverse22] = a * whole;
    at += slabSlots;
  }
  // The other face is at the given temperature itself.
  for (let i = of.given; i < slabs; i++) {
    const a = slab[at + near]! + slab[at + conv1]! + slab[at + rad1]!;
    slab[at + inverse11] = 1 / a;
    slab[at + inverse12] = slab[at + across]! / a;
    slab[at + inverse22] = 0;
    at += slabSlots;
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
