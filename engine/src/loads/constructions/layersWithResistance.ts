import type { WallLayer } from '../../physics/building/index.ts';
import { evenLayers, resistanceOf, scaled } from './builtLayer.ts';
import { type ConstructionId, filmsOf } from './construction.ts';
import { library, libraryLayers } from './library.ts';

/**
 * Even layers of a common construction with a stated resistance, films left out, m²K/W: the layer that insulates takes
 * the difference, or all layers alike where there is none or it cannot. Undefined for a resistance that is not above 0.
 */
export function layersWithResistance(choice: ConstructionId, resistance: number): WallLayer[] | undefined {
  if (!(resistance > 0)) return undefined;
  const { place, layers: specs } = library[choice];
  const layers = evenLayers(libraryLayers(choice, 1), filmsOf(place));
  const at = specs.findIndex((l) => l.insulates);
  const left = resistance - resistanceOf(layers.filter((_, i) => i !== at));
  if (at < 0 || left <= 0) return scaled(layers, resistance / resistanceOf(layers));
  return layers.map((l, i) => (i === at && 'thickness' in l ? { ...l, conductivity: l.thickness / left } : l));
}
