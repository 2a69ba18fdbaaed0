import { inIdOrder, type Project, type Resolved, type ResolvedProject } from '@kneewall/project';
import type { DesignDay } from '../climate/result.ts';
import { crawlU, slabU } from '../physics/conduction/index.ts';
import { unresolved } from '../plan/outcome.ts';
import type { Scenario } from '../plan/scenario.ts';
import type { WorkingRecorder } from '../plan/working.ts';
import { assemblyU, settingOf } from './assembly.ts';
import { glass, glassGiven, shadeShare } from './constructions/index.ts';
import type { Element, HouseElements, OtherSide, PartId } from './element.ts';
import { crawlSpace, groundFloor, sunFilm } from './outside.ts';
import { type Plane, type PlaneSun, windowSun } from './sunlight.ts';

type House = ResolvedProject['house'];
export type Surface = Resolved<NonNullable<Project['house']>['surfaces']>[string];
type Opening = Resolved<NonNullable<Project['house']>['openings']>[string];

/** What a house's elements are made with, beside the house. */
export type Setting = {
  readonly day: Pick<DesignDay, 'hours'>;
  readonly planes: (plane: Plane) => PlaneSun;
};

/** The house room by room, as entered. Unheated rooms are left out. */
export function elementsOfRooms(house: House, s: Scenario, setting: Setting, rec?: WorkingRecorder): HouseElements {
  const { rooms, surfaces } = s.part('layout', (x) => layout(house, x));
  const floors = s.part('floors', (x) => floorSetting(house, surfaces, x));
  const elements: Element[] = [];
  for (const { id, part, surface, within } of surfaces) {
    elements.push(s.part(part, (x) => opaqueElement(id, surface, house, within, x, setting, floors, rec)));
    for (const [oid, o, own] of within)
      elements.push(s.part(own, (x) => windowElement(oid, o, surface, x, setting, rec)));
  }
  return { elements, ...s.part('sizes', (x) => sizes(rooms, surfaces, x)) };
}

type Rooms = readonly (readonly [string, House['rooms'][string]])[];
/** The openings of a surface, each with the name of its piece of the answer. */
type Within = readonly (readonly [id: string, opening: Opening, part: string])[];
type Laid = {
  readonly id: string;
  /** The name of its piece of the answer, made once: it is asked for with every input moved. */
  readonly part: string;
  readonly surface: Surface;
  readonly within: Within;
};

/** The heated rooms and their surfaces in id order, each surface with its openings. */
function layout(house: House, s: Scenario): { rooms: Rooms; surfaces: readonly Laid[] } {
  const rooms = inIdOrder(house.rooms).filter(([, r]) => s.choice(r.conditioned) === 'yes');
  const heated = new Set(rooms.map(([id]) => id));
  const openings = inIdOrder(house.openings).map(([id, o]) => [id, o, `opening ${id}`] as const);
  const surfaces = inIdOrder(house.surfaces)
    .filter(([, x]) => x.room !== undefined && heated.has(x.room))
    .map(([id, surface]) => {
      const within = openings.filter(([, o]) => o.surface === id);
      return { id, part: `surface ${id}`, surface, within };
    });
  return { rooms, surfaces };
}

function sizes(rooms: Rooms, surfaces: readonly Laid[], s: Scenario): Omit<HouseElements, 'elements'> {
  const overhead = surfaces.filter(({ surface: x }) => s.choice(x.other) === 'attic' && s.choice(x.kind) === 'ceiling');
  return {
    volumes: Object.fromEntries(rooms.map(([id, r]) => [id, s.of(r.floorArea) * s.of(r.height)])),
    atticFloor: overhead.reduce((a, { surface }) => a + s.of(surface.area), 0),
  };
}

type Floors = { readonly area: number; readonly perimeter: number };

/** The footprint that meets the ground; its edge is that of a house a quarter longer than wide. */
function floorSetting(house: House, surfaces: readonly Laid[], s: Scenario): Floors {
  const onGround = surfaces.filter(({ surface: x }) => ['below', 'ground'].includes(s.choice(x.other)));
  const area = onGround.reduce((a, { surface }) => a + s.of(surface.area), 0);
  return { area, perimeter: edgeOf(area > 0 ? area : (s.maybe(house.floorArea) ?? 0)) };
}

export const edgeOf = (area: number): number => 4.03 * Math.sqrt(area);

function opaqueElement(
  id: string,
  surface: Surface,
  house: House,
  within: Within,
  s: Scenario,
  setting: Setting,
  floors: Floors,
  rec?: WorkingRecorder,
): Element {
  const area = s.of(surface.area);
  const glassArea = within.reduce((a, [, o]) => a + s.of(o.width) * s.of(o.height), 0);
  if (glassArea > area + 1e-9) return unresolved('out-of-range', surface.area.path);
  const net = area - glassArea;
  const u = surfaceU(surface, house, s, floors, rec);
  const conductance = u * net;
  rec?.step(
    `UA ${surface.name ?? id}`,
    'U * (A - A_windows)',
    { U: u, A: area, A_windows: glassArea },
    conductance,
    'W/K',
    'loads.transmission',
  );
  const side = sideOf(surface, s);
  const outdoors = side === 'outdoors' && s.choice(surface.other) === 'outdoors';
  const sun = outdoors ? opaqueSun(surface, conductance, s, setting) : [];
  return {
    room: surface.room ?? '',
    part: partOf(surface, s),
    subject: id,
    conductance,
    side,
    sun,
    leaks: outdoors ? net : 0,
    ...(outdoors ? { faces: s.of(surface.azimuth) } : {}),
  };
}

const sideOf = (surface: Surface, s: Scenario): OtherSide => {
  const other = s.choice(surface.other);
  return other === 'below' ? 'outdoors' : other;
};

export function partOf(surface: Surface, s: Scenario): PartId {
  const kind = s.choice(surface.kind);
  const parts: Readonly<Record<typeof kind, PartId>> = {
    wall: 'walls',
    ceiling: 'ceiling',
    roof: 'roof',
    floor: 'floor',
    door: 'doors',
  };
  return parts[kind];
}

/** U in place; a floor over a crawl space or on the ground by the published ground method. */
function surfaceU(surface: Surface, house: House, s: Scenario, floors: Floors, rec?: WorkingRecorder): number {
  const assembly = surface.assembly === undefined ? undefined : house.assemblies[surface.assembly];
  if (!assembly) return unresolved('missing', assemblyPath(surface));
  const kind = s.choice(surface.kind);
  const other = s.choice(surface.other);
  const u = assemblyU(assembly, settingOf(kind, other), s, rec);
  const ground = groundFloor(floors.area, floors.perimeter);
  if (other === 'below' && kind === 'floor') return crawlU(ground, { ...crawlSpace, floorU: u });
  // A slab's own films and concrete are in its U; what insulates it is the rest.
  if (other === 'ground' && kind === 'floor') return slabU(ground, Math.max(0, 1 / u - 0.33));
  return u;
}

export const assemblyPath = (surface: Surface): string => surface.area.path.replace(/area$/, 'assembly');

export function tiltOf(surface: Surface, s: Scenario): number {
  const given = s.maybe(surface.tilt);
  if (given !== undefined) return given;
  const kind = s.choice(surface.kind);
  return kind === 'wall' || kind === 'door' ? 90 : kind === 'floor' ? 180 : 30;
}

const planeOf = (surface: Surface, s: Scenario): Plane => ({
  tilt: tiltOf(surface, s),
  azimuth: s.of(surface.azimuth),
});

/** Sun on the outside of a wall or roof comes in by sol-air: absorptance × sun / outside film, through the wall's U. */
function opaqueSun(surface: Surface, conductance: number, s: Scenario, { planes }: Setting): number[] {
  const { beam, diffuse } = planes(planeOf(surface, s));
  const absorptance = s.of(surface.absorptance);
  return beam.map((b, i) => (conductance * absorptance * (b + (diffuse[i] ?? 0))) / sunFilm);
}

function windowElement(
  id: string,
  o: Opening,
  surface: Surface,
  s: Scenario,
  setting: Setting,
  rec?: WorkingRecorder,
): Element {
  const [width, height] = [s.of(o.width), s.of(o.height)];
  if ('missing' in o.glazing) return unresolved('missing', o.glazing.path);
  const glazing = s.choice(o.glazing);
  const u = 'missing' in o.uValue ? s.of(glassGiven(o.glazing, 'u')) : s.of(o.uValue);
  const conductance = u * width * height;
  rec?.step(`UA ${o.name ?? id}`, 'U * w * h', { U: u, w: width, h: height }, conductance, 'W/K', 'loads.transmission');
  const door = glazing === 'door';
  const outdoors = s.choice(surface.other) === 'outdoors';
  const glazed = {
    width,
    height,
    panes: glass[glazing]?.panes ?? 2,
    sunShare: 'missing' in o.sunShare ? s.of(glassGiven(o.glazing, 'sun')) : s.of(o.sunShare),
    shade: shadeShare[s.choice(o.shade)] ?? 1,
    overhang: s.of(o.overhang),
    gap: s.of(o.overhangGap),
  } as const;
  const plane = outdoors ? planeOf(surface, s) : undefined;
  const sun = plane && !door ? windowSun(glazed, plane, setting.planes(plane), setting.day) : [];
  return {
    room: surface.room ?? '',
    part: door ? 'doors' : 'windows',
    subject: id,
    conductance,
    side: sideOf(surface, s),
    sun,
    leaks: outdoors ? width * height : 0,
    ...(plane ? { faces: plane.azimuth } : {}),
  };
}
