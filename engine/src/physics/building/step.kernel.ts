import { heatOfAir } from '../flow/index.ts';
import type { Layout, State } from './layout.ts';
import {
  alone1,
  alone2,
  conv1,
  conv2,
  decay,
  face1,
  face2,
  fastAcross,
  fastFar,
  fastNear,
  gave2,
  inverse11,
  inverse12,
  inverse22,
  known1,
  known2,
  mode,
  modeSlots,
  q1,
  q2,
  rad1,
  rad2,
  slabSlots,
} from './slabSlots.ts';
import type { WeatherSteps } from './weatherSteps.ts';
import { solveZones } from './zones.kernel.ts';

/** The temperatures of all nodes before any system works, into `free`. */
export function solveFree(l: Layout, s: State, w: WeatherSteps, step: number): void {
  const { zones, zone } = l;
  const { work: k, free, t } = s;
  const hour = Math.floor(((step % l.stepsPerDay) * 24) / l.stepsPerDay);
  const airHeat = heatOfAir * w.outdoor[step]!;
  for (let z = 0; z < zones; z++) {
    free[2 * z] = zone.inertia[z]! * t[2 * z]! + k.outdoorFlow[z]! * airHeat + zone.gainAir[z * 24 + hour]!;
    free[2 * z + 1] = zone.gainRadiant[z * 24 + hour]!;
  }
  if (l.sun.lit[step] === 1) addSun(l, s, step);
  gatherBetween(l, s);
  gatherOutdoors(l, s, w, step);
  gatherGiven(l, s, Math.floor(step / l.perRow));
  solveZones(k.matrix, l.order, free, 1);
}

/** Adds the step's sun to what comes to the faces. */
function addSun({ sun }: Layout, { slab }: State, step: number): void {
  const { series, into, from, weight } = sun;
  const at = step * sun.count;
  for (let e = 0; e < into.length; e++) {
    const to = into[e]!;
    slab[to] = slab[to]! + weight[e]! * series[at + from[e]!]!;
  }
}

/** Finds the faces of slabs between zones as if these stood at 0 °C, and what they then give both. */
function gatherBetween({ slab: of }: Layout, { slab, free }: State): void {
  const { zone1, zone2, outdoors } = of;
  let at = 0;
  for (let i = 0; i < outdoors; i++) {
    const one = slab[at + known1]!;
    const two = slab[at + known2]!;
    const across = slab[at + inverse12]!;
    const first = slab[at + inverse11]! * one + across * two;
    const second = across * one + slab[at + inverse22]! * two;
    slab[at + alone1] = first;
    slab[at + alone2] = second;
    const node1 = 2 * zone1[i]!;
    free[node1] = free[node1]! + slab[at + conv1]! * first;
    free[node1 + 1] = free[node1 + 1]! + slab[at + rad1]! * first;
    const node2 = 2 * zone2[i]!;
    free[node2] = free[node2]! + slab[at + conv2]! * second;
    free[node2 + 1] = free[node2 + 1]! + slab[at + rad2]! * second;
    at += slabSlots;
  }
}

/** The same of slabs to the open air, whose air and sky are known: read here, since plain numbers would be boxed. */
function gatherOutdoors({ slab: of }: Layout, { slab, free }: State, w: WeatherSteps, step: number): void {
  const { zone1, outdoors, given } = of;
  const outdoor = w.outdoor[step]!;
  const sky = w.sky[step]!;
  let at = outdoors * slabSlots;
  for (let i = outdoors; i < given; i++) {
    const one = slab[at + known1]!;
    const two = slab[at + known2]! + slab[at + conv2]! * outdoor + slab[at + rad2]! * sky;
    const across = slab[at + inverse12]!;
    const first = slab[at + inverse11]! * one + across * two;
    slab[at + alone1] = first;
    slab[at + alone2] = across * one + slab[at + inverse22]! * two;
    const node = 2 * zone1[i]!;
    free[node] = free[node]! + slab[at + conv1]! * first;
    free[node + 1] = free[node + 1]! + slab[at + rad1]! * first;
    at += slabSlots;
  }
}

/** The same of slabs whose other face is at a given temperature. */
function gatherGiven({ slab: of, slabs, given, rows }: Layout, { slab, free }: State, row: number): void {
  for (let i = of.given; i < slabs; i++) {
    const at = i * slabSlots;
    const there = given[of.zone2[i]! * rows + row]!;
    const first = slab[at + inverse11]! * slab[at + known1]! + slab[at + inverse12]! * there;
    slab[at + alone1] = first;
    slab[at + alone2] = there;
    slab[at + gave2] = slab[at + known2]!;
    const node = 2 * of.zone1[i]!;
    free[node] = free[node]! + slab[at + conv1]! * first;
    free[node + 1] = free[node + 1]! + slab[at + rad1]! * first;
  }
}

/** Adds the systems' heat to the free temperatures and takes faces and walls to the end of the step. */
export function finishStep(l: Layout, s: State): void {
  const { t, free, heat } = s;
  const { response } = s.work;
  const { systems } = l;
  let at = 0;
  for (let v = 0; v < t.length; v++) {
    let sum = free[v]!;
    for (let j = 0; j < systems; j++) sum += response[at + j]! * heat[j]!;
    t[v] = sum;
    at += systems;
  }
  finishBetween(l, s);
  finishOthers(l, s);
  finishWalls(l, s);
}

function finishBetween({ slab: of }: Layout, { slab, t }: State): void {
  const { zone1, zone2, outdoors } = of;
  let at = 0;
  for (let i = 0; i < outdoors; i++) {
    const node1 = 2 * zone1[i]!;
    const node2 = 2 * zone2[i]!;
    const one = slab[at + conv1]! * t[node1]! + slab[at + rad1]! * t[node1 + 1]!;
    const two = slab[at + conv2]! * t[node2]! + slab[at + rad2]! * t[node2 + 1]!;
    const across = slab[at + inverse12]!;
    slab[at + face1] = slab[at + alone1]! + slab[at + inverse11]! * one + across * two;
    slab[at + face2] = slab[at + alone2]! + across * one + slab[at + inverse22]! * two;
    at += slabSlots;
  }
}

function finishOthers({ slab: of, slabs }: Layout, { slab, t }: State): void {
  const { zone1, outdoors, given } = of;
  let at = outdoors * slabSlots;
  for (let i = outdoors; i < slabs; i++) {
    const node = 2 * zone1[i]!;
    const one = slab[at + conv1]! * t[node]! + slab[at + rad1]! * t[node + 1]!;
    slab[at + face1] = slab[at + alone1]! + slab[at + inverse11]! * one;
    slab[at + face2] = slab[at + alone2]! + (i < given ? slab[at + inverse12]! * one : 0);
    at += slabSlots;
  }
}

/** Takes the modes on, and finds what each slab's past will give its faces in the next step. */
export function finishWalls({ slab: of, slabs }: Layout, { slab, modes }: State): void {
  const { firstMode } = of;
  let m = 0;
  let at = 0;
  for (let i = 0; i < slabs; i++) {
    const first = slab[at + face1]!;
    const second = slab[at + face2]!;
    const across = slab[at + fastAcross]!;
    let one = slab[at + fastNear]! * first + across * second;
    let two = slab[at + fastFar]! * second + across * first;
    const end = firstMode[i + 1]! * modeSlots;
    for (; m < end; m += modeSlots) {
      const near = modes[m + q1]!;
      const far = modes[m + q2]!;
      const now = modes[m + decay]! * modes[m + mode]! + near * first + far * second;
      modes[m + mode] = now;
      one += near * now;
      two += far * now;
    }
    slab[at + known1] = one;
    slab[at + known2] = two;
    at += slabSlots;
  }
}
