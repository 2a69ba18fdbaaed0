import { heatOfAir } from '../flow/index.ts';
import { inOpenAir, inZone, isGiven, type Layout, type State } from './layout.ts';
import {
  air2,
  conv1,
  conv2,
  inverse11,
  inverse12,
  inverse22,
  known1,
  known2,
  past2,
  rad1,
  rad2,
  sky2,
  slabSlots,
} from './slabSlots.ts';
import type { WeatherSteps } from './weatherSteps.ts';
import { solveZones } from './zones.kernel.ts';

/** What the walls remember, and the temperatures of all nodes before any system works, into `free`. */
export function solveFree(l: Layout, s: State, w: WeatherSteps, step: number): void {
  const { zones, zone } = l;
  const { work: k, free, t } = s;
  const hour = Math.floor(((step % l.stepsPerDay) * 24) / l.stepsPerDay);
  const outdoor = w.outdoor[step]!;
  for (let z = 0; z < zones; z++) {
    free[2 * z] =
      (zone.capacity[z]! / l.stepSeconds) * t[2 * z]! +
      heatOfAir * k.outdoorFlow[z]! * outdoor +
      zone.gainAir[z * 24 + hour]!;
    free[2 * z + 1] = zone.gainRadiant[z * 24 + hour]!;
  }
  remember(l, s);
  setThrough(l, s, step);
  gatherFaces(l, s, w, step);
  solveZones(k.matrix, 2 * zones, l.order, free, 0);
}

/** Sun let into each zone in the step, W. */
function setThrough({ sun, zones }: Layout, { work }: State, step: number): void {
  const { through, series } = sun;
  for (let z = 0; z < zones; z++) work.through[z] = through[z]! >= 0 ? series[through[z]! + step]! : 0;
}

/** W that each slab's past still gives its faces. */
function remember({ slab, mode, slabs }: Layout, { face1, face2, modes, work }: State): void {
  const { fastNear, fastFar, fastAcross, firstMode } = slab;
  const { q1, q2 } = mode;
  const { slab: own } = work;
  let m = 0;
  for (let i = 0; i < slabs; i++) {
    const first = face1[i]!;
    const second = face2[i]!;
    const across = fastAcross[i]!;
    let one = fastNear[i]! * first + across * second;
    let two = fastFar[i]! * second + across * first;
    const end = firstMode[i + 1]!;
    for (; m < end; m++) {
      one += q1[m]! * modes[m]!;
      two += q2[m]! * modes[m]!;
    }
    own[i * slabSlots + known1] = one;
    own[i * slabSlots + past2] = two;
  }
}

/** Adds what the faces give to the nodes, K's aside: their past, sun, and what is known on the other side. */
function gatherFaces(l: Layout, s: State, w: WeatherSteps, step: number): void {
  const { zone1, zone2, kind2 } = l.slab;
  const { series, inner, outer, outerArea, share1, share2 } = l.sun;
  const { slab: own, through } = s.work;
  const { free } = s;
  const { given, rows, slabs } = l;
  const row = Math.floor(step / l.perRow);
  const outdoor = w.outdoor[step]!;
  const sky = w.sky[step]!;
  for (let i = 0; i < slabs; i++) {
    const at = i * slabSlots;
    const kind = kind2[i]!;
    let r1 = own[at + known1]! + share1[i]! * through[zone1[i]!]!;
    if (inner[i]! >= 0) r1 += series[inner[i]! + step]!;
    let r2 = own[at + past2]!;
    if (kind === inOpenAir) {
      r2 += own[at + air2]! * outdoor + own[at + sky2]! * sky;
      if (outer[i]! >= 0) r2 += outerArea[i]! * series[outer[i]! + step]!;
    } else if (kind === isGiven) r2 = given[zone2[i]! * rows + row]!;
    else r2 += share2[i]! * through[zone2[i]!]!;
    own[at + known1] = r1;
    own[at + known2] = r2;
    const node1 = 2 * zone1[i]!;
    const alone = own[at + inverse11]! * r1 + own[at + inverse12]! * r2;
    free[node1] = free[node1]! + own[at + conv1]! * alone;
    free[node1 + 1] = free[node1 + 1]! + own[at + rad1]! * alone;
    if (kind !== inZone) continue;
    const node2 = 2 * zone2[i]!;
    const other = own[at + inverse12]! * r1 + own[at + inverse22]! * r2;
    free[node2] = free[node2]! + own[at + conv2]! * other;
    free[node2 + 1] = free[node2 + 1]! + own[at + rad2]! * other;
  }
}

const throughOf = (l: Layout, zone: number, step: number): number =>
  l.sun.through[zone]! >= 0 ? l.sun.series[l.sun.through[zone]! + step]! : 0;

/** Adds the systems' heat to the free temperatures and takes faces and walls to the end of the step. */
export function finishStep(l: Layout, s: State): void {
  const { t, free, heat } = s;
  const { response } = s.work;
  const n = 2 * l.zones;
  t.set(free);
  for (let j = 0; j < l.systems; j++) {
    const watts = heat[j]!;
    if (watts === 0) continue;
    for (let v = 0; v < n; v++) t[v] = t[v]! + response[j * n + v]! * watts;
  }
  finishFaces(l, s);
  finishModes(l, s);
}

function finishFaces(l: Layout, s: State): void {
  const { zone1, zone2, kind2 } = l.slab;
  const { slab: own } = s.work;
  const { t, face1, face2 } = s;
  const { slabs } = l;
  for (let i = 0; i < slabs; i++) {
    const at = i * slabSlots;
    const node1 = 2 * zone1[i]!;
    const kind = kind2[i]!;
    const r1 = own[at + known1]! + own[at + conv1]! * t[node1]! + own[at + rad1]! * t[node1 + 1]!;
    let r2 = own[at + known2]!;
    if (kind === inZone) {
      const node2 = 2 * zone2[i]!;
      r2 += own[at + conv2]! * t[node2]! + own[at + rad2]! * t[node2 + 1]!;
    }
    face1[i] = own[at + inverse11]! * r1 + own[at + inverse12]! * r2;
    face2[i] = kind === isGiven ? r2 : own[at + inverse12]! * r1 + own[at + inverse22]! * r2;
  }
}

function finishModes({ slab, mode, slabs }: Layout, { modes, face1, face2 }: State): void {
  const { firstMode } = slab;
  const { decay, q1, q2 } = mode;
  let m = 0;
  for (let i = 0; i < slabs; i++) {
    const first = face1[i]!;
    const second = face2[i]!;
    const end = firstMode[i + 1]!;
    for (; m < end; m++) modes[m] = decay[m]! * modes[m]! + q1[m]! * first + q2[m]! * second;
  }
}

/** J held by walls and by zone air, above 0 °C. */
export function heatHeld(l: Layout, s: State): number {
  const { slab: b, mode } = l;
  let sum = 0;
  for (let i = 0; i < l.slabs; i++) sum += b.fastEnergy1[i]! * s.face1[i]! + b.fastEnergy2[i]! * s.face2[i]!;
  for (let m = 0; m < mode.energy.length; m++) sum += mode.energy[m]! * s.modes[m]!;
  for (let z = 0; z < l.zones; z++) sum += l.zone.capacity[z]! * s.t[2 * z]!;
  return sum;
}

/**
 * W that came into the building in the step just finished, by way: through outer faces (sun on them counted), by air,
 * sun let in, gains, systems. Fills `ways`; their sum is what the building holds more, over the step.
 */
export function intake(l: Layout, s: State, w: WeatherSteps, step: number, ways: Float64Array): void {
  const { slab: b, sun, zone } = l;
  const { work: k } = s;
  const hour = Math.floor(((step % l.stepsPerDay) * 24) / l.stepsPerDay);
  ways.fill(0);
  for (let i = 0; i < l.slabs; i++) {
    const at = i * slabSlots;
    const share = sun.share1[i]! * throughOf(l, b.zone1[i]!, step);
    const inner = sun.inner[i]! >= 0 ? sun.series[sun.inner[i]! + step]! : 0;
    ways[2] = ways[2]! + share + inner;
    if (b.kind2[i] === inOpenAir) {
      const outer = sun.outer[i]! >= 0 ? sun.outerArea[i]! * sun.series[sun.outer[i]! + step]! : 0;
      const films =
        k.slab[at + air2]! * (w.outdoor[step]! - s.face2[i]!) + k.slab[at + sky2]! * (w.sky[step]! - s.face2[i]!);
      ways[0] = ways[0]! + films + outer;
    } else if (b.kind2[i] === isGiven)
      ways[0] = ways[0]! + b.far[i]! * s.face2[i]! - b.across[i]! * s.face1[i]! - k.slab[at + past2]!;
    else ways[2] = ways[2]! + sun.share2[i]! * throughOf(l, b.zone2[i]!, step);
  }
  for (let z = 0; z < l.zones; z++) {
    ways[1] = ways[1]! + heatOfAir * k.outdoorFlow[z]! * (w.outdoor[step]! - s.t[2 * z]!);
    for (let y = 0; y < l.zones; y++) {
      // Air that one zone sends another and does not get back leaves the other for the open.
      ways[1] = ways[1]! + k.carries[z * l.zones + y]! * (s.t[2 * y]! - s.t[2 * z]!);
    }
    ways[3] = ways[3]! + zone.gainAir[z * 24 + hour]! + zone.gainRadiant[z * 24 + hour]!;
  }
  for (let j = 0; j < l.systems; j++) ways[4] = ways[4]! + s.heat[j]!;
}
