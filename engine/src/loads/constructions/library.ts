import type { Chosen, Given } from '@kneewall/project';
import { combinedResistance } from '../../physics/conduction/index.ts';
import type { Recorder } from '../../physics/recorder.ts';
import type { BuiltLayer } from './builtLayer.ts';
import { type Construction, type ConstructionId, filmsOf, type LayerSpec } from './construction.ts';
import { floors } from './floors.ts';
import { type Material, materials } from './materials.ts';
import { overhead } from './overhead.ts';
import { walls } from './walls.ts';

/** Every common construction that the document can name, in layers: each names its source. */
export const library: Readonly<Record<ConstructionId, Construction>> = { ...walls, ...overhead, ...floors };

/** 0: all layers at the end that holds heat best; 1: as usual; 2: at the other end. */
export type End = 0 | 1 | 2;

const materialOf = (layer: LayerSpec): Material =>
  typeof layer.material === 'string' ? materials[layer.material] : layer.material;

const conductivityAt = (layer: LayerSpec, end: End): number =>
  layer.conductivity?.[end] ?? materialOf(layer).conductivity;

/** A layer of the library at one of its ends. */
function builtLayer(layer: LayerSpec, end: End): BuiltLayer {
  const { density, heat } = materialOf(layer);
  const thickness = layer.thickness[end];
  const share = layer.framing?.[end] ?? 0;
  return {
    resistance: thickness / conductivityAt(layer, end),
    body: { thickness, density, heat },
    ...(share > 0 ? { framing: { share, resistance: thickness / materials.stud.conductivity } } : {}),
  };
}

/** Layers of a common construction, inside first, at one of its ends. */
export const libraryLayers = (choice: ConstructionId, end: End): BuiltLayer[] =>
  library[choice].layers.map((l) => builtLayer(l, end));

/** Air-to-air U by the combined method of ISO 6946, W/(m²K), in its own place. Source: `iso-6946.combined`. */
export function libraryU(choice: ConstructionId, end: End, rec?: Recorder): number {
  const { place } = library[choice];
  if (rec) recordLayers(choice, end, rec);
  return 1 / combinedResistance(libraryLayers(choice, end), filmsOf(place), rec).total;
}

function recordLayers(choice: ConstructionId, end: End, rec: Recorder): void {
  const { layers, source } = library[choice];
  for (const l of layers) {
    const inputs = { d: l.thickness[end], k: conductivityAt(l, end) };
    rec.step(`R ${materialOf(l).name}`, 'd / k', inputs, inputs.d / inputs.k, 'm²K/W', source);
  }
}

/** A layer as vapour goes through it between framing: m²K/W, m of still air, and the figures they come from. */
export type VapourSpec = { readonly name: string; readonly d: number; readonly k: number; readonly mu: number };

/** Layers of a common construction as it usually is between its framing, where no wood crosses, inside first. */
export const betweenFraming = (choice: ConstructionId): VapourSpec[] =>
  library[choice].layers.map((l) => {
    const { name, mu } = materialOf(l);
    return { name, d: l.thickness[1], k: conductivityAt(l, 1), mu };
  });

/** The U of a common construction, from its layers' ends, as an input of its own, so that it counts among the unknowns. */
export const commonU = (chosen: Chosen<ConstructionId>): Given => ({
  low: libraryU(chosen.choice, 0),
  likely: libraryU(chosen.choice, 1),
  high: libraryU(chosen.choice, 2),
  path: chosen.path,
  kind: 'u-value',
  known: 'assumed',
});
