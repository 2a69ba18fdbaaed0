import { inOrder } from '@kneewall/project';
import type { Layer } from '../../physics/conduction/index.ts';
import { unresolved } from '../../plan/outcome.ts';
import type { Scenario } from '../../plan/scenario.ts';
import type { BuiltLayer } from './builtLayer.ts';
import type { Assembly } from './construction.ts';

export type EnteredLayer = Assembly['layers'][string];

/**
 * Heat through the layers that a person entered, inside first. A layer without resistance, thickness or conductivity is
 * missing; one that conducts nothing is out of range. Only what heat needs is read, so that nothing else counts among
 * the unknowns of a load.
 */
export const enteredResistances = (assembly: Assembly, s: Scenario): Layer[] =>
  inOrder(assembly.layers).map(([, layer]) => throughLayer(layer, s).heat);

/** The same layers with what they weigh. */
export const enteredLayers = (assembly: Assembly, s: Scenario): BuiltLayer[] =>
  inOrder(assembly.layers).map(([, layer]) => {
    const { heat, thickness } = throughLayer(layer, s);
    return thickness === undefined || thickness === 0
      ? heat
      : { ...heat, body: bodyOf(layer, thickness, heat.resistance, s) };
  });

function throughLayer(layer: EnteredLayer, s: Scenario): { heat: Layer; thickness: number | undefined } {
  const known = s.maybe(layer.resistance);
  const thickness = known === undefined ? s.of(layer.thickness) : s.maybe(layer.thickness);
  const resistance = known ?? (thickness ?? 0) / conducting(layer.conductivity, s);
  const share = s.of(layer.framing.share);
  if (share === 0 || thickness === undefined) return { heat: { resistance }, thickness };
  const framing = { share, resistance: thickness / conducting(layer.framing.conductivity, s) };
  return { heat: { resistance, framing }, thickness };
}

export function conducting(conductivity: EnteredLayer['conductivity'], s: Scenario): number {
  const k = s.of(conductivity);
  return k > 0 ? k : unresolved('out-of-range', conductivity.path);
}

/** What was said of its weight and heat, else what its conductivity tells of it. */
function bodyOf({ density, specificHeat }: EnteredLayer, thickness: number, resistance: number, s: Scenario) {
  const guess = weightOf(thickness / resistance);
  return { thickness, density: s.maybe(density) ?? guess.density, heat: s.maybe(specificHeat) ?? guess.heat };
}

/** Weight of a material nobody weighed, by how it conducts: what insulates is light. Source: `loads.materials` (from memory). */
function weightOf(conductivity: number): { density: number; heat: number } {
  if (conductivity < 0.07) return { density: 30, heat: 1000 };
  if (conductivity < 0.145) return { density: 500, heat: 1600 };
  if (conductivity < 0.35) return { density: 800, heat: 1000 };
  return { density: 2000, heat: 900 };
}
