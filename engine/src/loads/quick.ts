import type { Given, ResolvedProject } from '@kneewall/project';
import { crawlU, slabU } from '../physics/conduction/index.ts';
import { unresolved } from '../plan/outcome.ts';
import type { Scenario } from '../plan/scenario.ts';
import type { WorkingRecorder } from '../plan/working.ts';
import { type EraPart, eraU } from './constructions/index.ts';
import type { Element, HouseElements, PartId } from './element.ts';
import { crawlSpace, fourSides, groundFloor, sunFilm } from './outside.ts';
import { edgeOf, type Setting } from './rooms.ts';
import { windowSun } from './sunlight.ts';

type House = ResolvedProject['house'];

/** m² of glass for each m² of floor in ordinary houses. Source: `loads.quick` (common practice). */
export const glassShare: Given = {
  path: 'house.openings#area',
  kind: 'fraction',
  known: 'assumed',
  low: 0.09,
  likely: 0.13,
  high: 0.18,
};
export const sunShare: Given = {
  path: 'house.openings#sun',
  kind: 'fraction',
  known: 'assumed',
  low: 0.4,
  likely: 0.55,
  high: 0.7,
};
/** Storey height and the sun that walls take up, as ordinary houses have them. */
export const storeyHeight = 2.4;
export const wallAbsorptance = 0.6;

/** Heated floor area as answered, m²: nothing follows from a house of none. */
export function answeredFloor(house: House, s: Scenario): number {
  const area = s.of(house.floorArea);
  return area > 0 ? area : unresolved('out-of-range', house.floorArea.path);
}

/** The whole house as one room, from a handful of answers: nearly square, a quarter of its glass on each side. */
export function elementsOfAnswers(house: House, s: Scenario, setting: Setting, rec?: WorkingRecorder): HouseElements {
  const floorArea = answeredFloor(house, s);
  const storeys = s.of(house.storeys);
  const footprint = floorArea / storeys;
  const edge = edgeOf(footprint);
  const glassArea = s.of(glassShare) * floorArea;
  const walls = edge * storeyHeight * storeys - glassArea;
  const u = (part: EraPart): number =>
    'missing' in house.era ? unresolved('missing', house.era.path) : s.of(eraU(house.era, part));
  const attic = s.choice(house.attic) !== 'none';
  const path = (part: PartId, uValue: number, area: number, more: Partial<Element> = {}): Element => {
    const conductance = uValue * area;
    rec?.step(`UA ${part}`, 'U * A', { U: uValue, A: area }, conductance, 'W/K', 'loads.transmission');
    return { room: 'house', part, subject: part, conductance, side: 'outdoors', sun: [], leaks: 0, ...more };
  };
  const sides = fourSides.map((azimuth) => setting.planes({ tilt: 90, azimuth }));
  const wallU = u('wall');
  const wallSun = setting.day.hours.map((_, i) =>
    sides.reduce(
      (a, p) => a + (wallAbsorptance * wallU * (walls / 4) * ((p.beam[i] ?? 0) + (p.diffuse[i] ?? 0))) / sunFilm,
      0,
    ),
  );
  const elements = [
    path('walls', wallU, walls, { sun: wallSun, leaks: walls }),
    path('windows', u('window'), glassArea, { sun: glassSun(glassArea, s, setting), leaks: glassArea }),
    path(attic ? 'ceiling' : 'roof', u('ceiling'), footprint, { side: attic ? 'attic' : 'outdoors' }),
    path('floor', floorU(house, s, u('floor'), footprint, edge), footprint, {
      side: s.choice(house.below) === 'slab' ? 'ground' : 'outdoors',
    }),
  ];
  return {
    elements,
    volumes: { house: floorArea * storeyHeight },
    atticFloor: attic ? footprint : 0,
  };
}

function floorU(house: House, s: Scenario, u: number, area: number, perimeter: number): number {
  const ground = groundFloor(area, perimeter);
  const below = s.choice(house.below);
  if (below === 'slab') return slabU(ground, 0);
  // An unheated basement is taken as a crawl space without vents.
  return crawlU(ground, { ...crawlSpace, floorU: u, vents: below === 'crawl' ? crawlSpace.vents : 0 });
}

function glassSun(area: number, s: Scenario, setting: Setting): number[] {
  const side = Math.sqrt(area / 4);
  const glazed = {
    width: side,
    height: side,
    panes: 2 as const,
    sunShare: s.of(sunShare),
    shade: 0.75,
    overhang: 0,
    gap: 0,
  };
  const faces = fourSides.map((azimuth) => {
    const plane = { tilt: 90, azimuth };
    return windowSun(glazed, plane, setting.planes(plane), setting.day);
  });
  return setting.day.hours.map((_, i) => faces.reduce((a, f) => a + (f[i] ?? 0), 0));
}
