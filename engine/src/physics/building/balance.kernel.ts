import { heatOfAir } from '../flow/index.ts';
import type { Layout, State } from './layout.ts';
import { conv1, conv2, inverse11, inverse12, inverse22, rad1, rad2, slabSlots } from './slabSlots.ts';
import { solveZones } from './zones.kernel.ts';

/** W/K between the nodes: what each takes for its own degree, less what its neighbours' degrees give it. */
export function setBalance(l: Layout, s: State): void {
  const { zones, slabs, zone, order } = l;
  const { zone1, zone2, outdoors } = l.slab;
  const { block } = order;
  const { slab, work } = s;
  const { matrix: m, carries, outdoorFlow } = work;
  m.fill(0);
  for (let z = 0; z < zones; z++) {
    let own = zone.inertia[z]! + heatOfAir * outdoorFlow[z]!;
    for (let y = 0; y < zones; y++) {
      const there = block[z * zones + y]!;
      if (y === z || there < 0) continue;
      const carried = carries[z * zones + y]!;
      own += carried;
      m[there] = -carried;
    }
    m[block[z * zones + z]!] = own;
  }
  let at = 0;
  for (let i = 0; i < slabs; i++) {
    addFace(m, block[zone1[i]! * (zones + 1)]!, slab, at + conv1, at + inverse11);
    at += slabSlots;
  }
  at = 0;
  for (let i = 0; i < outdoors; i++) {
    const z1 = zone1[i]!;
    const z2 = zone2[i]!;
    addFace(m, block[z2 * (zones + 1)]!, slab, at + conv2, at + inverse22);
    addThrough(m, block[z1 * zones + z2]!, block[z2 * zones + z1]!, slab, at);
    at += slabSlots;
  }
}

/**
 * What a zone's air and radiation give a face, by the films at `films`, less what comes back to them through it, as the
 * slab's inverse lets it. Arrays and places are handed on, since plain numbers would be boxed.
 */
function addFace(m: Float64Array, at: number, slab: Float64Array, films: number, inverse: number): void {
  const air = slab[films]!;
  const radiant = slab[films + 1]!;
  const back = slab[inverse]!;
  const mixed = air * back * radiant;
  m[at] = m[at]! + (air - air * back * air);
  m[at + 1] = m[at + 1]! - mixed;
  m[at + 2] = m[at + 2]! - mixed;
  m[at + 3] = m[at + 3]! + (radiant - radiant * back * radiant);
}

/** What two zones give each other through the slab between them, whose numbers begin at `at`. */
function addThrough(m: Float64Array, there: number, back: number, slab: Float64Array, at: number): void {
  const air = slab[at + conv1]! * slab[at + inverse12]!;
  const radiant = slab[at + rad1]! * slab[at + inverse12]!;
  const airs = air * slab[at + conv2]!;
  const airToRadiant = air * slab[at + rad2]!;
  const radiantToAir = radiant * slab[at + conv2]!;
  const radiants = radiant * slab[at + rad2]!;
  m[there] = m[there]! - airs;
  m[there + 1] = m[there + 1]! - airToRadiant;
  m[there + 2] = m[there + 2]! - radiantToAir;
  m[there + 3] = m[there + 3]! - radiants;
  m[back] = m[back]! - airs;
  m[back + 1] = m[back + 1]! - radiantToAir;
  m[back + 2] = m[back + 2]! - airToRadiant;
  m[back + 3] = m[back + 3]! - radiants;
}

/** K at every node for a watt of each system. */
export function setResponses(l: Layout, s: State): void {
  const { zones, systems } = l;
  const { response, matrix, share } = s.work;
  response.fill(0);
  for (let j = 0; j < systems; j++)
    for (let z = 0; z < zones; z++) response[2 * z * systems + j] = share[j * zones + z]!;
  solveZones(matrix, l.order, response, systems);
}
