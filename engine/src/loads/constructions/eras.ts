import type { Chosen, Given } from '@kneewall/project';
import type { WallLayer } from '../../physics/building/index.ts';
import { bothFilms, type ConstructionId, type EraId, filmsOf } from './construction.ts';
import { layersWithResistance } from './layersWithResistance.ts';
import { library } from './library.ts';
import { range, spanned, type Triple } from './triple.ts';

export type EraPart = 'wall' | 'ceiling' | 'floor' | 'window';
/**
 * From a house that was blown full, insulated above and given new windows since, to one that nobody touched. In between
 * stands the mean of such houses as they are now, since means add up to a house and what is most frequent does not: of
 * those older than 1966 about half have doubled panes, a fifth nothing worth naming overhead (surveys), a third walls
 * blown full, a quarter insulated floors (from memory). Source: `loads.eras`.
 */
export const eraRanges: Readonly<Record<EraId, Readonly<Record<EraPart, Triple>>>> = {
  'before-1940': { wall: [0.45, 1, 1.4], ceiling: [0.2, 0.7, 2.5], floor: [0.45, 1.5, 2.2], window: [2.6, 4.1, 5.7] },
  '1940-1965': {
    wall: [0.45, 0.85, 1.3],
    ceiling: [0.2, 0.45, 0.85],
    floor: [0.45, 1.45, 2.1],
    window: [2.6, 4.1, 5.7],
  },
  '1966-1980': { wall: [0.4, 0.55, 0.7], ceiling: [0.2, 0.4, 0.55], floor: [0.4, 1.3, 1.9], window: [2.1, 3.1, 4.8] },
  '1981-1992': { wall: [0.4, 0.5, 0.6], ceiling: [0.2, 0.28, 0.35], floor: [0.3, 0.42, 0.55], window: [2.6, 2.8, 3.2] },
  '1993-2006': {
    wall: [0.33, 0.42, 0.5],
    ceiling: [0.16, 0.2, 0.25],
    floor: [0.28, 0.34, 0.45],
    window: [1.9, 2.1, 2.8],
  },
  'since-2007': {
    wall: [0.25, 0.3, 0.38],
    ceiling: [0.11, 0.14, 0.18],
    floor: [0.19, 0.23, 0.3],
    window: [1.7, 1.9, 2.1],
  },
};

/**
 * The U that houses of an age have. Where nobody said the age, it spans from the newest to the oldest, and is one
 * unknown for all parts: they are of the same age. Source: `loads.eras` (common practice and code history, from memory).
 */
export function eraU(era: Chosen<EraId>, part: EraPart): Given {
  const own = eraRanges[era.choice][part];
  if (era.known === 'entered') return { ...range(own), path: `${era.path}#${part}`, kind: 'u-value', known: 'assumed' };
  const all = Object.values(eraRanges).map((parts) => parts[part]);
  return { ...spanned(own, all), path: era.path, kind: 'u-value', known: 'assumed' };
}

export type OpaquePart = 'wall' | 'ceiling' | 'roof' | 'floor';

/** What such parts were made of in each age; their U is the age's own. Source: `loads.eras`. */
const built: Readonly<Record<EraId, Readonly<Record<Exclude<OpaquePart, 'roof'>, ConstructionId>>>> = {
  'before-1940': { wall: 'wall-empty', ceiling: 'ceiling-r7', floor: 'floor-bare' },
  '1940-1965': { wall: 'wall-thin', ceiling: 'ceiling-r7', floor: 'floor-bare' },
  '1966-1980': { wall: 'wall-r11', ceiling: 'ceiling-r11', floor: 'floor-r11' },
  '1981-1992': { wall: 'wall-r11', ceiling: 'ceiling-r19', floor: 'floor-r11' },
  '1993-2006': { wall: 'wall-r19', ceiling: 'ceiling-r30', floor: 'floor-r19' },
  'since-2007': { wall: 'wall-r20-continuous', ceiling: 'ceiling-r49', floor: 'floor-r30' },
};

/** Even layers of a part of a house of an age, inside first, at a U that such houses have, W/(m²K). */
export function eraLayers(era: EraId, part: OpaquePart, u: number): WallLayer[] {
  const choice = part === 'roof' ? 'roof-batt' : built[era][part];
  const layers = layersWithResistance(choice, 1 / u - bothFilms(filmsOf(library[choice].place)));
  if (!layers) throw new Error(`assert: ${u} is a U that a ${part} of ${era} can have`);
  return layers;
}
