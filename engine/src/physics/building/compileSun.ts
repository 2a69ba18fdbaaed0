import type { SunArrays } from './layout.ts';
import { type PlaneSun, sunOnPlane } from './planeSun.ts';
import { BuildingRefused } from './refused.ts';
import { known1, known2, slabSlots } from './slabSlots.ts';
import type { Building, OutdoorFace, Slab } from './spec.ts';
import type { WeatherSteps } from './weatherSteps.ts';
import { pastShades, windowSun } from './windowSun.ts';
import type { ZoneOf } from './zoneOf.ts';

const unshaded = { width: 1, height: 1, shades: [] };

/** Sun on and in a building whose slabs lie as in `slabs`. */
export function sunArrays(
  building: Building,
  slabs: readonly Slab[],
  weather: WeatherSteps,
  zoneOf: ZoneOf,
): SunArrays {
  const series: Float32Array[] = [];
  const add = (x: Float32Array): number => series.push(x) - 1;
  const planes = new Map<string, PlaneSun>();
  const planeOf = (face: OutdoorFace) => {
    const key = `${face.tilt} ${face.azimuth}`;
    const found = planes.get(key);
    if (found) return found;
    const sun = sunOnPlane(weather.sun, face, building.groundReflectance);
    planes.set(key, sun);
    return sun;
  };
  const walls = new Map<string, number>();
  const wallOf = (face: OutdoorFace): number => {
    const key = JSON.stringify([face.tilt, face.azimuth, face.shaded]);
    const found = walls.get(key);
    if (found !== undefined) return found;
    const { direct, around } = pastShades(face.shaded ?? unshaded, face, weather.sun, planeOf(face));
    const at = add(direct.map((d, i) => d + (around[i] ?? 0)));
    walls.set(key, at);
    return at;
  };
  const outer: Entry[] = [];
  const inner: Entry[] = [];
  const throughs = building.zones.map(() => undefined as Float32Array | undefined);
  building.slabs.forEach((s) => {
    if (s.other.side !== 'outdoors' || s.other.absorptance === 0) return;
    outer.push({ slab: s, face: known2, from: wallOf(s.other), weight: s.other.absorptance * s.area });
  });
  for (const window of building.windows) {
    const { other, inside, id } = window.slab;
    if (other.side !== 'outdoors') throw new BuildingRefused(id, 'a window has to look outdoors');
    const sun = windowSun(window, other, weather.sun, planeOf(other));
    outer.push({ slab: window.slab, face: known2, from: add(sun.outer), weight: 1 });
    inner.push({ slab: window.slab, face: known1, from: add(sun.inner), weight: 1 });
    const z = zoneOf(inside.zone, id);
    const before = throughs[z];
    throughs[z] = before ? before.map((x, step) => x + (sun.through[step] ?? 0)) : sun.through;
  }
  const through = throughs.map((x) => (x ? add(x) : -1));
  const entries = [...outer, ...slabs.flatMap((s) => letIn(s, through, zoneOf)), ...inner];
  const at = new Map(slabs.map((s, i) => [s, i * slabSlots]));
  return {
    ...stepAfterStep(series, weather.count),
    outer: outer.length,
    into: Int32Array.from(entries, (e) => (at.get(e.slab) ?? 0) + e.face),
    from: Int32Array.from(entries, (e) => e.from),
    weight: Float64Array.from(entries, (e) => e.weight),
  };
}

type Entry = { readonly slab: Slab; readonly face: number; readonly from: number; readonly weight: number };

/** Shares that a slab's faces take of what their zones' windows let through; `through` is the series of each zone, or -1. */
function letIn(slab: Slab, through: readonly number[], zoneOf: ZoneOf): Entry[] {
  const share = (zone: string, face: number, weight: number): Entry[] => {
    const from = through[zoneOf(zone, slab.id)] ?? -1;
    return from < 0 || weight === 0 ? [] : [{ slab, face, from, weight }];
  };
  const { other } = slab;
  return [
    ...share(slab.inside.zone, known1, slab.sunShare ?? 0),
    ...(other.side === 'zone' ? share(other.zone, known2, slab.sunShareOther ?? 0) : []),
  ];
}

/** All series together, step after step, and in which steps any is above zero. */
function stepAfterStep(all: readonly Float32Array[], steps: number): Pick<SunArrays, 'series' | 'count' | 'lit'> {
  const count = all.length;
  const series = new Float32Array(count * steps);
  const lit = new Uint8Array(steps);
  all.forEach((one, k) => {
    for (let step = 0; step < steps; step++) {
      const watts = one[step] ?? 0;
      if (watts === 0) continue;
      series[step * count + k] = watts;
      lit[step] = 1;
    }
  });
  return { series, count, lit };
}
