import { heatOfAir } from '../flow/index.ts';
import type { Layout, State } from './layout.ts';
import {
  across,
  conv2,
  face1,
  face2,
  far,
  fastEnergy1,
  fastEnergy2,
  gave2,
  mode,
  modeSlots,
  rad2,
  slabSlots,
} from './slabSlots.ts';
import type { WeatherSteps } from './weatherSteps.ts';

/** J held by walls and by zone air, above 0 °C. */
export function heatHeld(l: Layout, s: State): number {
  const { energy } = l.mode;
  let sum = 0;
  for (let at = 0; at < s.slab.length; at += slabSlots)
    sum += s.slab[at + fastEnergy1]! * s.slab[at + face1]! + s.slab[at + fastEnergy2]! * s.slab[at + face2]!;
  for (let m = 0; m < energy.length; m++) sum += energy[m]! * s.modes[m * modeSlots + mode]!;
  for (let z = 0; z < l.zones; z++) sum += l.zone.capacity[z]! * s.t[2 * z]!;
  return sum;
}

/**
 * W that came into the building in the step just finished, by way: through outer faces (sun on them counted), by air,
 * sun let in, gains, systems. Fills `ways`; their sum is what the building holds more, over the step.
 */
export function intake(l: Layout, s: State, w: WeatherSteps, step: number, ways: Float64Array): void {
  const { slab: of, sun, zone } = l;
  const { work: k, slab } = s;
  const hour = Math.floor(((step % l.stepsPerDay) * 24) / l.stepsPerDay);
  ways.fill(0);
  for (let e = 0; e < sun.into.length; e++) {
    const way = e < sun.outer ? 0 : 2;
    ways[way] = ways[way]! + sun.weight[e]! * sun.series[step * sun.count + sun.from[e]!]!;
  }
  for (let i = of.outdoors; i < l.slabs; i++) {
    const at = i * slabSlots;
    const face = slab[at + face2]!;
    if (i < of.given)
      ways[0] = ways[0]! + slab[at + conv2]! * (w.outdoor[step]! - face) + slab[at + rad2]! * (w.sky[step]! - face);
    else ways[0] = ways[0]! + slab[at + far]! * face - slab[at + across]! * slab[at + face1]! - slab[at + gave2]!;
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
