import { gasConstant } from '../air/index.ts';
import { heatOfAir } from '../flow/index.ts';
import { stefanBoltzmann } from '../sun/index.ts';
import { ductArrays } from './compileDucts.ts';
import { airArrays, controlArrays } from './compileServices.ts';
import { sunArrays } from './compileSun.ts';
import {
  type AirArrays,
  type DuctArrays,
  inOpenAir,
  inZone,
  isGiven,
  type Layout,
  type SlabArrays,
  type ZoneArrays,
} from './layout.ts';
import { BuildingRefused } from './refused.ts';
import { type SlabModes, slabModes, usuallyForgotten } from './slabModes.ts';
import * as slots from './slabSlots.ts';
import { slabSlots } from './slabSlots.ts';
import type { Building, Moisture, OutdoorFace, Slab, ZoneFace } from './spec.ts';
import type { WeatherSteps } from './weatherSteps.ts';
import type { ZoneOf } from './zoneOf.ts';
import { zoneOrder } from './zoneOrder.ts';

/** W/(m²K) between black faces at 20 °C. */
const radiationAt20 = 4 * stefanBoltzmann * 293.15 ** 3;

/**
 * Lays a building and its weather out for the loop. Throws BuildingRefused naming the zone, slab or window that is not
 * possible: a zone without surfaces, a layer without thickness, an id that nothing has. `kept` saves working out a wall
 * again; `forgotten` is what `slabModes` makes of it.
 */
export function compileBuilding(
  building: Building,
  weather: WeatherSteps,
  moisture: Readonly<Record<string, Moisture>> = {},
  kept: KeptWalls = new Map(),
  forgotten = usuallyForgotten,
): Layout {
  const zoneIds = building.zones.map((z) => z.id);
  const zoneOf = (id: string, at: string): number => {
    const found = zoneIds.indexOf(id);
    if (found < 0) throw new BuildingRefused(at, `there is no zone "${id}"`);
    return found;
  };
  const asGiven = [...building.slabs, ...building.windows.map((w) => w.slab)];
  const density = building.pressure / (gasConstant * 293.15);
  const { slabs, arrays: slab, modes } = slabArrays(building, asGiven, weather.stepSeconds, zoneOf, kept, forgotten);
  const air = airArrays(building, density, zoneOf);
  const ducts = ductArrays(building, zoneOf);
  return {
    stepSeconds: weather.stepSeconds,
    perRow: weather.perRow,
    stepsPerDay: 86_400 / weather.stepSeconds,
    count: weather.count,
    rows: weather.count / weather.perRow,
    zoneIds,
    zones: zoneIds.length,
    slabs: slabs.length,
    systems: building.systems.length,
    slab,
    mode: modes,
    zone: zoneArrays(building, moisture, density, weather.stepSeconds, zoneOf),
    order: zoneOrder(zoneIds.length, pairsThatMeet(zoneIds.length, slab, air, ducts)),
    sun: sunArrays(building, slabs, weather, zoneOf),
    air,
    control: controlArrays(building, weather.count / weather.perRow, 86_400 / weather.stepSeconds, moisture, zoneOf),
    ducts,
    given: Float64Array.from(building.series.flatMap((s) => [...s])),
  };
}

/** Slabs lie by what is on their other side. */
const kindOf = (s: Slab): number => ({ zone: inZone, outdoors: inOpenAir, given: isGiven })[s.other.side];

/** Walls already worked out, by step and layers: lent to whoever lays out the same walls again. */
export type KeptWalls = Map<string, SlabModes>;

/** m² of faces by zone. */
function faceAreas(building: Building, slabs: readonly Slab[], zoneOf: ZoneOf): number[] {
  const areas = building.zones.map(() => 0);
  for (const s of slabs) {
    for (const face of [s.inside, s.other]) {
      if (face.side !== 'zone') continue;
      const z = zoneOf(face.zone, s.id);
      areas[z] = (areas[z] ?? 0) + s.area;
    }
  }
  areas.forEach((a, i) => {
    if (a === 0) throw new BuildingRefused(building.zones[i]?.id ?? '', 'a zone needs at least one surface');
  });
  return areas;
}

/**
 * W/K by radiation from a face to the mean of all faces of its zone: it sees the others in proportion to their areas
 * (Carroll's mean radiant network in its first step). Source: `radiation.star` (from memory).
 */
function radiationOf(face: ZoneFace, area: number, all: number): number {
  if (face.radiative !== undefined) return face.radiative * area;
  if (face.emittance <= 0) return 0;
  const resistance = (1 - face.emittance) / face.emittance + (1 - area / all);
  return (radiationAt20 * area) / Math.max(resistance, 1e-6);
}

function slabArrays(
  building: Building,
  asGiven: readonly Slab[],
  step: number,
  zoneOf: ZoneOf,
  made: KeptWalls,
  forgotten: number,
) {
  const areas = faceAreas(building, asGiven, zoneOf);
  const modesOf = (s: Slab): SlabModes => {
    const key = `${step} ${forgotten} ${JSON.stringify(s.layers)}`;
    try {
      const found = made.get(key) ?? slabModes(s.layers, step, forgotten);
      made.set(key, found);
      return found;
    } catch (thrown) {
      throw new BuildingRefused(s.id, thrown instanceof Error ? thrown.message : 'its layers are not possible');
    }
  };
  // Refused in the order in which they were given.
  const both = asGiven.map((slab) => ({ slab, modes: modesOf(slab) }));
  both.sort((a, b) => kindOf(a.slab) - kindOf(b.slab));
  const slabs = both.map((b) => b.slab);
  const all = both.map((b) => b.modes);
  const firstMode = new Int32Array(slabs.length + 1);
  const constants = new Float64Array(slabs.length * slabSlots);
  const radiation = (f: ZoneFace, s: Slab): number => radiationOf(f, s.area, areas[zoneOf(f.zone, s.id)] ?? s.area);
  all.forEach((m, i) => {
    firstMode[i + 1] = (firstMode[i] ?? 0) + m.slow.length;
    const s = slabs[i];
    if (s) constants.set(constantsOf(s, m, building.windFactor, radiation), i * slabSlots);
  });
  const kind2 = Int32Array.from(slabs, kindOf);
  const outdoors = kind2.filter((kind) => kind === inZone).length;
  const arrays: SlabArrays = {
    ids: slabs.map((s) => s.id),
    outdoors,
    given: outdoors + kind2.filter((kind) => kind === inOpenAir).length,
    constants,
    firstMode,
    zone1: Int32Array.from(slabs, (s) => zoneOf(s.inside.zone, s.id)),
    kind2,
    zone2: Int32Array.from(slabs, (s) =>
      s.other.side === 'zone' ? zoneOf(s.other.zone, s.id) : s.other.side === 'given' ? s.other.series : -1,
    ),
  };
  return { slabs, arrays, modes: modeArrays(slabs, all) };
}

/** What of a slab never changes, in the places of `slabSlots.ts`. */
function constantsOf(
  s: Slab,
  m: SlabModes,
  windFactor: number,
  radiation: (f: ZoneFace, s: Slab) => number,
): Float64Array {
  const own = new Float64Array(slabSlots);
  own[slots.near] = m.near * s.area;
  own[slots.far] = m.far * s.area;
  own[slots.across] = m.across * s.area;
  own[slots.fastNear] = m.fast.near * s.area;
  own[slots.fastFar] = m.fast.far * s.area;
  own[slots.fastAcross] = m.fast.across * s.area;
  own[slots.fastEnergy1] = m.fast.energy1 * s.area;
  own[slots.fastEnergy2] = m.fast.energy2 * s.area;
  const swing = (f: ZoneFace): number => (f.swing ?? 0) * (f.looks ?? 0) * s.area;
  own[slots.convection1] = s.inside.convective * s.area;
  own[slots.swing1] = swing(s.inside);
  own[slots.radiation1] = radiation(s.inside, s);
  const { other } = s;
  if (other.side === 'zone') {
    own[slots.convection2] = other.convective * s.area;
    own[slots.swing2] = swing(other);
    own[slots.radiation2] = radiation(other, s);
  } else if (other.side === 'outdoors') {
    own[slots.film] = filmOf(other) * s.area;
    own[slots.filmByWind] = windFilmOf(other) * windFactor * s.area;
    own[slots.toSky] = other.emittance * skyShare(other.tilt) * s.area;
    own[slots.toAround] = other.emittance * (1 - skyShare(other.tilt)) * s.area;
  }
  return own;
}

function modeArrays(slabs: readonly Slab[], all: readonly SlabModes[]) {
  // Each mode carries the root of its wall's area, so that what goes in and what comes out use one number.
  const flat = slabs.flatMap((s, i) => (all[i]?.slow ?? []).map((m) => ({ ...m, root: Math.sqrt(s.area) })));
  return {
    decay: Float64Array.from(flat, (m) => m.decay),
    q1: Float64Array.from(flat, (m) => m.q1 * m.root),
    q2: Float64Array.from(flat, (m) => m.q2 * m.root),
    energy: Float64Array.from(flat, (m) => m.energy * m.root),
  };
}

/** Film of still air and by wind, W/(m²K): 4 + 4 v. Source: `iso-6946.outside-film` (from memory). */
const filmOf = (face: OutdoorFace): number =>
  typeof face.convective === 'number' ? face.convective : 4 * face.convective.wind;
const windFilmOf = (face: OutdoorFace): number => (typeof face.convective === 'number' ? 0 : 4 * face.convective.wind);

/**
 * Share of what a tilted face sees that is as cold as the sky: of the sky it sees, the part near the horizon is as warm
 * as the air. Source: `sky.view` (from memory).
 */
const skyShare = (tilt: number): number => ((1 + Math.cos((tilt * Math.PI) / 180)) / 2) ** 1.5;

function zoneArrays(
  building: Building,
  moisture: Readonly<Record<string, Moisture>>,
  density: number,
  step: number,
  zoneOf: ZoneOf,
): ZoneArrays {
  const n = building.zones.length;
  const gainAir = new Float64Array(n * 24);
  const gainRadiant = new Float64Array(n * 24);
  for (const g of building.gains) {
    const z = zoneOf(g.zone, 'gains');
    for (let h = 0; h < 24; h++) {
      const watts = g.watts[h] ?? 0;
      gainAir[z * 24 + h] = (gainAir[z * 24 + h] ?? 0) + watts * (1 - g.radiant);
      gainRadiant[z * 24 + h] = (gainRadiant[z * 24 + h] ?? 0) + watts * g.radiant;
    }
  }
  const held = building.zones.map((z) => moisture[z.id]);
  // What surfaces still hold of what they held, over a step, of those that hold any.
  const kept = held.map((m) => (m && m.bufferAir > 0 ? 1 / (1 + step / (m.bufferHours * 3600)) : 1));
  const capacity = Float64Array.from(building.zones, (z) => z.volume * density * heatOfAir + (z.contents ?? 0));
  return {
    capacity,
    inertia: capacity.map((c) => c / step),
    airFlow: Float64Array.from(building.zones, (z) => (z.volume * density) / step),
    followFlow: Float64Array.from(held, (m, z) => ((m?.bufferAir ?? 0) * (1 - (kept[z] ?? 1))) / step),
    kept: Float64Array.from(kept),
    wideRange: Int32Array.from(building.zones, (z) => (z.wideRange ? 1 : 0)),
    gainAir,
    gainRadiant,
    vapour: Float64Array.from(held.flatMap((m) => Array.from({ length: 24 }, (_, h) => m?.vapour[h] ?? 0))),
  };
}

/** Zones that give each other heat: through a slab, by air that one sends the other, through the walls of ducts. */
function* pairsThatMeet(
  zones: number,
  slab: SlabArrays,
  air: AirArrays,
  ducts: DuctArrays,
): Generator<readonly [number, number]> {
  for (const [i, kind] of slab.kind2.entries()) if (kind === inZone) yield [slab.zone1[i] ?? 0, slab.zone2[i] ?? 0];
  for (const [i, from] of air.passageFrom.entries()) yield [from, air.passageTo[i] ?? from];
  for (const [at, share] of air.leakShare.entries()) {
    const up = air.leakUpZone[Math.floor(at / zones)] ?? -1;
    if (share > 0 && up >= 0) yield [up, at % zones];
  }
  for (const between of [ducts.air, ducts.walls])
    for (const [at, x] of between.entries()) if (x !== 0) yield [Math.floor(at / zones) % zones, at % zones];
}
