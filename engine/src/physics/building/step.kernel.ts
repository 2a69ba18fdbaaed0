import { heatOfAir } from '../flow/index.ts';
import { solveFactored } from './dense.kernel.ts';
import { inOpenAir, inZone, isGiven, type Layout, type State } from './layout.ts';
import type { WeatherSteps } from './weatherSteps.ts';

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
  gatherFaces(l, s, w, step);
  solveFactored(k.matrix, 2 * zones, free, 0);
}

/** W that each slab's past still gives its faces. */
function remember(l: Layout, s: State): void {
  const { slab: b, mode } = l;
  const { work: k, modes, face1, face2 } = s;
  for (let i = 0; i < l.slabs; i++) {
    let h1 = b.fastNear[i]! * face1[i]! + b.fastAcross[i]! * face2[i]!;
    let h2 = b.fastFar[i]! * face2[i]! + b.fastAcross[i]! * face1[i]!;
    const end = b.firstMode[i + 1]!;
    for (let m = b.firstMode[i]!; m < end; m++) {
      h1 += mode.q1[m]! * modes[m]!;
      h2 += mode.q2[m]! * modes[m]!;
    }
    k.history1[i] = h1;
    k.history2[i] = h2;
  }
}

/** Adds what the faces give to the nodes, K's aside: their past, sun, and what is known on the other side. */
function gatherFaces(l: Layout, s: State, w: WeatherSteps, step: number): void {
  const { slab: b, sun } = l;
  const { work: k, free } = s;
  const row = Math.floor(step / l.perRow);
  const outdoor = w.outdoor[step]!;
  const sky = w.sky[step]!;
  for (let i = 0; i < l.slabs; i++) {
    const at1 = 2 * b.zone1[i]!;
    const kind = b.kind2[i]!;
    let r1 = k.history1[i]! + sun.share1[i]! * throughOf(l, b.zone1[i]!, step);
    let r2 = k.history2[i]!;
    if (sun.inner[i]! >= 0) r1 += sun.series[sun.inner[i]! + step]!;
    if (kind === inOpenAir) {
      r2 += k.air2[i]! * outdoor + k.sky2[i]! * sky;
      if (sun.outer[i]! >= 0) r2 += sun.outerArea[i]! * sun.series[sun.outer[i]! + step]!;
    } else if (kind === isGiven) {
      r2 = l.given[b.zone2[i]! * l.rows + row]!;
    } else r2 += sun.share2[i]! * throughOf(l, b.zone2[i]!, step);
    k.history1[i] = r1;
    k.known2[i] = r2;
    const alone = k.inverse11[i]! * r1 + k.inverse12[i]! * r2;
    free[at1] = free[at1]! + k.conv1[i]! * alone;
    free[at1 + 1] = free[at1 + 1]! + k.rad1[i]! * alone;
    if (kind !== inZone) continue;
    const at2 = 2 * b.zone2[i]!;
    const other = k.inverse12[i]! * r1 + k.inverse22[i]! * r2;
    free[at2] = free[at2]! + k.conv2[i]! * other;
    free[at2 + 1] = free[at2 + 1]! + k.rad2[i]! * other;
  }
}

const throughOf = (l: Layout, zone: number, step: number): number =>
  l.sun.through[zone]! >= 0 ? l.sun.series[l.sun.through[zone]! + step]! : 0;

/** Adds the systems' heat to the free temperatures and takes faces and walls to the end of the step. */
export function finishStep(l: Layout, s: State): void {
  const { slab: b, mode } = l;
  const { work: k, t, free, heat, modes } = s;
  const n = 2 * l.zones;
  for (let v = 0; v < n; v++) {
    let sum = free[v]!;
    for (let j = 0; j < l.systems; j++) sum += k.response[j * n + v]! * heat[j]!;
    t[v] = sum;
  }
  for (let i = 0; i < l.slabs; i++) {
    const at1 = 2 * b.zone1[i]!;
    const r1 = k.history1[i]! + k.conv1[i]! * t[at1]! + k.rad1[i]! * t[at1 + 1]!;
    let r2 = k.known2[i]!;
    let face1 = 0;
    let face2 = 0;
    if (b.kind2[i] === isGiven) {
      face2 = r2;
      face1 = k.inverse11[i]! * r1 + k.inverse12[i]! * r2;
    } else {
      if (b.kind2[i] === inZone) {
        const at2 = 2 * b.zone2[i]!;
        r2 += k.conv2[i]! * t[at2]! + k.rad2[i]! * t[at2 + 1]!;
      }
      face1 = k.inverse11[i]! * r1 + k.inverse12[i]! * r2;
      face2 = k.inverse12[i]! * r1 + k.inverse22[i]! * r2;
    }
    s.face1[i] = face1;
    s.face2[i] = face2;
    const end = b.firstMode[i + 1]!;
    for (let m = b.firstMode[i]!; m < end; m++)
      modes[m] = mode.decay[m]! * modes[m]! + mode.q1[m]! * face1 + mode.q2[m]! * face2;
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
    const share = sun.share1[i]! * throughOf(l, b.zone1[i]!, step);
    const inner = sun.inner[i]! >= 0 ? sun.series[sun.inner[i]! + step]! : 0;
    ways[2] = ways[2]! + share + inner;
    if (b.kind2[i] === inOpenAir) {
      const outer = sun.outer[i]! >= 0 ? sun.outerArea[i]! * sun.series[sun.outer[i]! + step]! : 0;
      const films = k.air2[i]! * (w.outdoor[step]! - s.face2[i]!) + k.sky2[i]! * (w.sky[step]! - s.face2[i]!);
      ways[0] = ways[0]! + films + outer;
    } else if (b.kind2[i] === isGiven)
      ways[0] = ways[0]! + b.far[i]! * s.face2[i]! - b.across[i]! * s.face1[i]! - k.history2[i]!;
    else ways[2] = ways[2]! + sun.share2[i]! * throughOf(l, b.zone2[i]!, step);
  }
  for (let z = 0; z < l.zones; z++) {
    ways[1] = ways[1]! + heatOfAir * k.outdoorFlow[z]! * (w.outdoor[step]! - s.t[2 * z]!);
    for (let y = 0; y < l.zones; y++) {
      // Air that one zone sends another and does not get back leaves the other for the open.
      ways[1] = ways[1]! + heatOfAir * k.exchange[z * l.zones + y]! * (s.t[2 * y]! - s.t[2 * z]!);
    }
    ways[3] = ways[3]! + zone.gainAir[z * 24 + hour]! + zone.gainRadiant[z * 24 + hour]!;
  }
  for (let j = 0; j < l.systems; j++) ways[4] = ways[4]! + s.heat[j]!;
}
