import type { Slab } from '../../physics/building/index.ts';
import { rad } from '../../physics/exact.ts';
import { materials } from '../constructions/index.ts';
import { crawlSpace, fourSides } from '../outside.ts';
import { outdoorFace, zoneFace } from './faces.ts';
import { groundBelow, soilLayers, type YearWave } from './ground.ts';
import type { Shell } from './shell.ts';

/** m³ and slabs of the space under the roof: a roof of four equal slopes over the ceilings that look into it. */
export function atticSpace(shell: Shell): { volume: number; slabs: Slab[] } {
  const floor = shell.surfaces.reduce((a, x) => a + (x.behind === 'attic' && x.part === 'ceiling' ? x.area : 0), 0);
  const { pitch, deckU, absorptance } = shell.roof;
  const seen = Math.max(floor, 1);
  const height = (Math.sqrt(seen) / 2) * Math.tan(pitch * rad) * 0.5;
  const deck = { ...materials['board-sheathing'], thickness: 0.019, conductivity: 0.019 * deckU };
  const slabs = fourSides.map(
    (azimuth): Slab => ({
      id: `roof ${azimuth}`,
      area: seen / Math.cos(pitch * rad) / 4,
      layers: [deck],
      inside: zoneFace('attic', 180 - pitch),
      other: outdoorFace(pitch, azimuth, absorptance),
    }),
  );
  return { volume: seen * Math.max(height, 0.1), slabs };
}

/** J/(m³ K) of air. */
const heatOfVolume = 1207;

/** The crawl space or unheated basement: ground, walls round it, and outdoor air through its vents, m³/s. */
export function spaceBelow(shell: Shell, wave: YearWave) {
  const { footprint, perimeter, vented } = shell;
  const ground = groundBelow(footprint, perimeter, 0, wave);
  const films = 0.17;
  const wall = perimeter * crawlSpace.height;
  // ISO 13370 states what the vents carry as heat, W/K for each m² of opening and m/s.
  const { vents: opening, wind, windShield } = crawlSpace;
  const ventHeat = vented ? 1450 * opening * wind * windShield * (perimeter / 2) : 0;
  const slabs: Slab[] = [
    {
      id: 'ground below',
      area: footprint,
      layers: soilLayers(Math.max(1 / ground.u - films, 0.3)),
      inside: zoneFace('below', 0),
      other: { side: 'given', series: 0 },
    },
    ...fourSides.map(
      (azimuth): Slab => ({
        id: `wall below ${azimuth}`,
        area: wall / 4,
        layers: [
          { ...materials.concrete, thickness: 0.2, conductivity: 0.2 / Math.max(1 / crawlSpace.wallU - films, 0.1) },
        ],
        inside: zoneFace('below', 90),
        other: outdoorFace(90, azimuth, 0.6),
      }),
    ),
  ];
  return { volume: footprint * crawlSpace.height, slabs, vents: ventHeat / heatOfVolume, ground };
}

/** An unheated room next door, built so that it settles half way between the house and outdoors. Source: `loads.unheated`. */
export function spaceBeside(shell: Shell): { volume: number; slabs: Slab[] } {
  const shared = shell.surfaces.filter((x) => x.behind === 'unheated');
  const slabs = shared.map(
    (x): Slab => ({
      id: `beyond ${x.id}`,
      area: x.area,
      layers: x.layers,
      inside: zoneFace('unheated', 90),
      other: outdoorFace(90, 0, 0.6),
    }),
  );
  return { volume: 2.4 * shared.reduce((a, x) => a + x.area, 0), slabs };
}
