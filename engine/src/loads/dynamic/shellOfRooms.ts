import { inIdOrder, type Project, type Resolved, type ResolvedProject } from '@kneewall/project';
import { unresolved } from '../../plan/outcome.ts';
import type { Scenario } from '../../plan/scenario.ts';
import { settingOf } from '../assembly.ts';
import { glass, glassGiven, shadeShare } from '../constructions/index.ts';
import { assemblyPath, edgeOf, partOf, type Surface, tiltOf } from '../rooms.ts';
import { halfOpen, type Shell, type ShellRoof, type ShellSurface, type ShellWindow } from './shell.ts';
import { surfaceLayers } from './wallLayers.ts';

type House = ResolvedProject['house'];
type Opening = Resolved<NonNullable<Project['house']>['openings']>[string];

/** The heated rooms of a project and what bounds them, as entered. */
export function shellOfRooms(house: House, s: Scenario): Shell {
  const rooms = inIdOrder(house.rooms)
    .filter(([, r]) => s.choice(r.conditioned) === 'yes')
    .map(([id, r]) => ({
      id,
      floorArea: s.of(r.floorArea),
      height: s.of(r.height),
      storey: s.of(r.storey),
      use: s.choice(r.use),
      doorOpen: s.choice(r.door.shut) === 'open' ? 1 : halfOpen,
    }));
  const heated = new Set(rooms.map((r) => r.id));
  const openings = inIdOrder(house.openings);
  const surfaces = inIdOrder(house.surfaces)
    .filter(([, x]) => x.room !== undefined && heated.has(x.room))
    .map(([id, x]) =>
      surfaceOf(
        id,
        x,
        house,
        openings.filter(([, o]) => o.surface === id),
        s,
      ),
    );
  const below = surfaces.filter((x) => x.behind === 'below' || x.behind === 'ground');
  const footprint = below.reduce((a, x) => a + x.area, 0) || (s.maybe(house.floorArea) ?? 0);
  return {
    rooms,
    surfaces,
    roof: roofOf(house, s),
    footprint,
    perimeter: edgeOf(footprint),
    vented: s.choice(house.below) === 'crawl',
  };
}

/** The roof as its own fields state it. */
export function roofOf(house: House, s: Scenario): ShellRoof {
  return {
    pitch: s.of(house.roof.pitch),
    absorptance: s.of(house.roof.absorptance),
    deckU: s.of(house.roof.uValue),
    airChanges: s.choice(house.attic) === 'sealed' ? 0.5 : s.of(house.roof.airChanges),
  };
}

function surfaceOf(
  id: string,
  surface: Surface,
  house: House,
  within: readonly (readonly [string, Opening])[],
  s: Scenario,
): ShellSurface {
  const windows = within.map(([oid, o]) => windowOf(oid, o, s));
  const glassArea = windows.reduce((a, w) => a + w.width * w.height, 0);
  const gross = s.of(surface.area);
  if (glassArea > gross + 1e-9) return unresolved('out-of-range', surface.area.path);
  const assembly = surface.assembly === undefined ? undefined : house.assemblies[surface.assembly];
  if (!assembly) return unresolved('missing', assemblyPath(surface));
  const kind = s.choice(surface.kind);
  const behind = s.choice(surface.other);
  const setting = settingOf(kind, behind);
  return {
    id,
    room: surface.room ?? '',
    part: partOf(surface, s),
    behind,
    area: gross - glassArea,
    layers: surfaceLayers(assembly, { kind, ground: behind === 'ground', setting }, s),
    tilt: kind === 'ceiling' ? 0 : tiltOf(surface, s),
    azimuth: behind === 'outdoors' && kind !== 'ceiling' && kind !== 'floor' ? s.of(surface.azimuth) : 0,
    absorptance: behind === 'outdoors' ? s.of(surface.absorptance) : 0,
    windows,
  };
}

function windowOf(id: string, o: Opening, s: Scenario): ShellWindow {
  if ('missing' in o.glazing) return unresolved('missing', o.glazing.path);
  const glazing = s.choice(o.glazing);
  const door = glazing === 'door';
  const sun = 'missing' in o.sunShare ? s.of(glassGiven(o.glazing, 'sun')) : s.of(o.sunShare);
  return {
    id,
    width: s.of(o.width),
    height: s.of(o.height),
    u: 'missing' in o.uValue ? s.of(glassGiven(o.glazing, 'u')) : s.of(o.uValue),
    sunShare: door ? 0 : sun,
    panes: glass[glazing]?.panes ?? 2,
    covering: shadeShare[s.choice(o.shade)] ?? 1,
    overhang: s.of(o.overhang),
    gap: s.of(o.overhangGap),
    recess: s.of(o.recess),
  };
}
