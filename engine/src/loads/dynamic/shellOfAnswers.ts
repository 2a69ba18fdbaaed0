import type { ResolvedProject } from '@kneewall/project';
import { unresolved } from '../../plan/outcome.ts';
import type { Scenario } from '../../plan/scenario.ts';
import { type EraPart, eraLayers, eraU, evenLayers, filmsOf, libraryLayers } from '../constructions/index.ts';
import { fourSides } from '../outside.ts';
import { answeredFloor, glassShare, storeyHeight, sunShare, wallAbsorptance } from '../quick.ts';
import { edgeOf } from '../rooms.ts';
import { halfOpen, type Shell, type ShellSurface } from './shell.ts';
import { roofOf } from './shellOfRooms.ts';

type House = ResolvedProject['house'];

/** The whole house as one room, from a handful of answers: nearly square, a quarter of its glass on each side. */
export function shellOfAnswers(house: House, s: Scenario): Shell {
  const floorArea = answeredFloor(house, s);
  const storeys = s.of(house.storeys);
  const footprint = floorArea / storeys;
  const edge = edgeOf(footprint);
  const glassArea = s.of(glassShare) * floorArea;
  const era = 'missing' in house.era ? unresolved('missing', house.era.path) : house.era;
  const u = (part: EraPart): number => s.of(eraU(era, part));
  const below = s.choice(house.below);
  const attic = s.choice(house.attic) !== 'none';
  const side = Math.sqrt(glassArea / 4);
  const base = { room: 'house', azimuth: 0, absorptance: wallAbsorptance, windows: [] };
  const walls = fourSides.map(
    (azimuth): ShellSurface => ({
      ...base,
      id: `wall ${azimuth}`,
      part: 'walls',
      behind: 'outdoors',
      area: (edge * storeyHeight * storeys - glassArea) / 4,
      layers: eraLayers(era.choice, 'wall', u('wall')),
      tilt: 90,
      azimuth,
      windows: [
        {
          id: `window ${azimuth}`,
          width: side,
          height: side,
          u: u('window'),
          sunShare: s.of(sunShare),
          panes: 2,
          covering: 0.75,
          overhang: 0,
          gap: 0,
          recess: 0,
        },
      ],
    }),
  );
  const top: ShellSurface = {
    ...base,
    id: attic ? 'ceiling' : 'roof',
    part: attic ? 'ceiling' : 'roof',
    behind: attic ? 'attic' : 'outdoors',
    area: footprint,
    layers: eraLayers(era.choice, attic ? 'ceiling' : 'roof', u('ceiling')),
    tilt: 0,
  };
  const floor: ShellSurface = {
    ...base,
    id: 'floor',
    part: 'floor',
    behind: below === 'slab' ? 'ground' : 'below',
    area: footprint,
    // A slab is concrete; what a floor over a space insulates stands in its age.
    layers:
      below === 'slab'
        ? evenLayers(libraryLayers('slab', 1), filmsOf('ground'))
        : eraLayers(era.choice, 'floor', u('floor')),
    tilt: 180,
  };
  return {
    rooms: [{ id: 'house', floorArea, height: storeyHeight, storey: 1, use: 'living', doorOpen: halfOpen }],
    surfaces: [...walls, top, floor],
    roof: roofOf(house, s),
    footprint,
    perimeter: edge,
    vented: below === 'crawl',
  };
}
