import { inOrder, type Project, type Resolved } from '@kneewall/project';
import {
  combinedResistance,
  type HeatDirection,
  insideFilm,
  type Layer,
  outsideFilm,
} from '../physics/conduction/index.ts';
import { unresolved } from '../plan/outcome.ts';
import type { Scenario } from '../plan/scenario.ts';
import type { WorkingRecorder } from '../plan/working.ts';
import { commonU } from './constructions.ts';

type Assemblies = Resolved<NonNullable<Project['house']>['assemblies']>;
export type Assembly = Assemblies[string];

/** Which way heat goes through a surface in winter, and whether its other side is sheltered. */
export type Setting = { readonly direction: HeatDirection; readonly sheltered: boolean };

/**
 * U of a construction in its place, W/(m²K): a figure entered, else its layers by the combined method, else the
 * common construction named. Layers go from the inside to the outside.
 */
export function assemblyU(assembly: Assembly, setting: Setting, s: Scenario, rec?: WorkingRecorder): number {
  if (!('missing' in assembly.uValue)) {
    rec?.given('U', assembly.uValue);
    return s.of(assembly.uValue);
  }
  const layers = inOrder(assembly.layers).map(([, layer]) => layerOf(layer, s));
  if (layers.length === 0) {
    if ('missing' in assembly.common) return unresolved('missing', assembly.common.path);
    const u = commonU(assembly.common);
    rec?.given('U', u);
    return s.of(u);
  }
  const inside = insideFilm[setting.direction];
  const { total } = combinedResistance(layers, { inside, outside: setting.sheltered ? inside : outsideFilm }, rec);
  rec?.step('U', '1 / R_T', { R_T: total }, 1 / total, 'W/(m²K)', 'iso-6946.combined');
  return 1 / total;
}

function layerOf(layer: Assembly['layers'][string], s: Scenario): Layer {
  const known = s.maybe(layer.resistance);
  const thickness = known === undefined ? s.of(layer.thickness) : s.maybe(layer.thickness);
  const resistance = known ?? (thickness ?? 0) / s.of(layer.conductivity);
  const share = s.of(layer.framing.share);
  if (share === 0 || thickness === undefined) return { resistance };
  return { resistance, framing: { share, resistance: thickness / s.of(layer.framing.conductivity) } };
}
