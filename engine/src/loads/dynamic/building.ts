import { humidityRatio } from '../../physics/air/index.ts';
import {
  type Building,
  type Leakage,
  type Moisture,
  type Slab,
  type System,
  withSunShares,
  type Zone,
} from '../../physics/building/index.ts';
import { type Envelope, leakageTerms } from '../../physics/infiltration/index.ts';
import { ceilingLeak } from '../ceilingLeak.ts';
import { resistanceOf } from '../constructions/index.ts';
import { scaledBuilding } from '../learned/scaled.ts';
import { atticSpace, spaceBelow, spaceBeside } from './around.ts';
import { outdoorFace, zoneFace } from './faces.ts';
import { glazedWindow } from './glazing.ts';
import { groundBelow, soilLayers, type YearWave } from './ground.ts';
import type { HouseInputs } from './houseInputs.ts';
import { furniture, gainsOf, hubOf, insideSlabs, moistureOf, passagesOf } from './inside.ts';
import type { Shell, ShellSurface } from './shell.ts';

export type HouseBuilding = { readonly building: Building; readonly moisture: Readonly<Record<string, Moisture>> };

/** Eave over station wind by storeys, as the leakage model has it. */
const eaveWind = [0.48, 0.59, 0.67] as const;

/**
 * The whole house for the heat balance: rooms with their surfaces and windows, attic, space below, unheated room, air
 * between them. `monthOfRow` is the month of the year, 0 to 12, of each row of weather; `occupied` 0 while nobody is at
 * home, 1 as usual.
 */
export function buildingOf(
  inputs: HouseInputs,
  monthOfRow: Float64Array,
  systems: readonly System[],
  occupied: number,
): HouseBuilding {
  const { shell, envelope, leaks, wave, wanted, pressure } = inputs;
  const people = inputs.people * occupied;
  const has = (behind: ShellSurface['behind']): boolean => shell.surfaces.some((x) => x.behind === behind);
  const attic = has('attic') ? atticSpace(shell) : undefined;
  const below = has('below') ? spaceBelow(shell, wave) : undefined;
  const beside = has('unheated') ? spaceBeside(shell) : undefined;
  const hub = hubOf(shell.rooms);
  const grounds = shell.surfaces.filter((x) => x.behind === 'ground').map((x) => onGround(x, shell, wave));
  const given = [...(below ? [below.ground] : []), ...grounds.map((g) => g.ground)];
  const windows = shell.surfaces.flatMap((x) =>
    x.behind === 'outdoors' || x.behind === 'unheated' ? x.windows.map((w) => glazedWindow(w, x)) : [],
  );
  const slabs = [
    ...shell.surfaces.filter((x) => x.behind !== 'ground').map(slabOf),
    ...grounds.map((g, i): Slab => ({ ...g.slab, other: { side: 'given', series: i + (below ? 1 : 0) } })),
    ...(hub ? insideSlabs(shell, hub) : []),
    ...(attic?.slabs ?? []),
    ...(below?.slabs ?? []),
    ...(beside?.slabs ?? []),
  ];
  const zones: Zone[] = [
    ...shell.rooms.map((r) => ({ id: r.id, volume: r.floorArea * r.height, contents: furniture * r.floorArea })),
    ...(attic ? [{ id: 'attic', volume: attic.volume, wideRange: true }] : []),
    ...(below ? [{ id: 'below', volume: below.volume, wideRange: true }] : []),
    ...(beside ? [{ id: 'unheated', volume: beside.volume, wideRange: true }] : []),
  ];
  const building: Building = {
    pressure,
    zones,
    slabs: withSunShares(slabs, windows),
    windows,
    leakage: [
      roomLeak(envelope, leaks, attic !== undefined),
      ...(attic ? [atticVents(shell, attic.volume)] : []),
      ...(below ? [{ kind: 'constant' as const, zone: 'below', flow: below.vents }] : []),
      ...(beside ? [{ kind: 'constant' as const, zone: 'unheated', flow: beside.volume / 3600 }] : []),
    ],
    passages: hub ? passagesOf(shell, hub) : [],
    gains: gainsOf(shell, people, inputs.appliances * occupied),
    systems,
    fans: [],
    windFactor: eaveWind[envelope.storeys - 1] ?? 0.48,
    groundReflectance: inputs.groundReflectance,
    series: given.map((g) => monthOfRow.map(g.temperature)),
  };
  const ids = shell.rooms.map((r) => r.id);
  return {
    building: scaledBuilding(building, ids, inputs.times ?? 1),
    moisture: moistureOf(shell, people, humidityRatio({ t: wanted.cooling, rh: wanted.humidity }, pressure)),
  };
}

function slabOf(x: ShellSurface): Slab {
  const zones = { attic: 'attic', below: 'below', unheated: 'unheated' } as const;
  return {
    id: x.id,
    area: x.area,
    layers: x.layers,
    inside: zoneFace(x.room, 180 - x.tilt),
    other:
      x.behind === 'outdoors' || x.behind === 'ground'
        ? outdoorFace(x.tilt, x.azimuth, x.absorptance)
        : zoneFace(zones[x.behind], x.tilt),
  };
}

/** A floor or wall on the ground: its own layers, then soil, to a temperature that follows the year. */
function onGround(x: ShellSurface, shell: Shell, wave: YearWave) {
  const own = resistanceOf(x.layers);
  const ground = groundBelow(shell.footprint, shell.perimeter, own, wave);
  const rest = Math.max(1 / ground.u - own - 0.17, 0.3);
  return { ground, slab: { ...slabOf(x), layers: [...x.layers, ...soilLayers(rest)] } };
}

function roomLeak(envelope: Envelope, shares: Readonly<Record<string, number>>, attic: boolean): Leakage {
  const terms = leakageTerms(envelope);
  return {
    kind: 'stack-and-wind',
    shares,
    ...terms,
    ...(attic ? { up: { zone: 'attic', share: ceilingLeak.likely } } : {}),
  };
}

/**
 * The attic's own air: the air changes entered at 10 K and 3 m/s, half by each, growing with the root of the difference
 * and with the wind. Source: `loads.attic-air` (common practice).
 */
function atticVents(shell: Shell, volume: number): Leakage {
  const usual = (shell.roof.airChanges * volume) / 3600;
  return {
    kind: 'stack-and-wind',
    shares: { attic: 1 },
    stack: (usual * Math.SQRT1_2) / Math.sqrt(10),
    wind: (usual * Math.SQRT1_2) / 3,
    exponent: 0.5,
  };
}
