import { inOrder } from '@kneewall/project';
import type { VapourLayer } from '../physics/moisture/index.ts';
import { unresolved } from '../plan/outcome.ts';
import type { Scenario } from '../plan/scenario.ts';
import type { WorkingRecorder } from '../plan/working.ts';
import type { ColdSide } from './coldSides.ts';
import {
  betweenFraming,
  bothFilms,
  builtAs,
  conducting,
  type EnteredLayer,
  filmsIn,
  layersWithResistance,
} from './constructions/index.ts';
import type { RoomCase } from './roomAir.ts';

export type NamedVapourLayer = VapourLayer & { readonly name: string };

/**
 * A construction as vapour goes through it, between its framing, inside first: the layers entered, else those of the
 * common construction chosen, brought to a U where one was entered; else, where there is a U alone, those of the
 * construction of its kind nearest to it. A construction that was only assumed tells nothing about its layers and is
 * missing.
 */
export function vapourLayers(side: ColdSide, s: Scenario, rec?: WorkingRecorder): NamedVapourLayer[] {
  const entered = inOrder(side.assembly.layers);
  if (entered.length === 0) return usualLayers(side, s, rec);
  // All that is missing at once, so that it can be entered in one go.
  const missing = entered.flatMap(([, layer]) => missingIn(layer));
  if (missing.length > 0) return unresolved('missing', ...missing);
  const layers = entered.map(([id, layer]) => enteredLayer(layer.name ?? id, layer, s, rec));
  const [first] = entered;
  if (first && !layers.some((l) => l.sd > 0)) return unresolved('out-of-range', first[1].stillAir.path);
  return layers;
}

/**
 * Paint on the warm side, which nobody counts as a layer, as m of still air: gloss or old oil paint in dry rooms, ordinary
 * coats, one thin coat in damp rooms. Source: `loads.paint`.
 */
const paint: Readonly<Record<RoomCase, number>> = { low: 3, likely: 0.7, high: 0.1 };

/** That paint as a layer; none where the innermost layer entered says itself how it holds vapour. */
export function coats({ assembly }: ColdSide, room: RoomCase, rec?: WorkingRecorder): NamedVapourLayer[] {
  const [innermost] = inOrder(assembly.layers);
  if (innermost && !('missing' in innermost[1].stillAir)) return [];
  const sd = paint[room];
  if (room === 'likely') rec?.step('sd Paint', 'table', {}, sd, 'm', 'loads.paint');
  return [{ name: 'Paint', resistance: 0, sd }];
}

/** What a layer still needs: a resistance or thickness and conductivity; an equivalent of still air or factor and thickness. */
function missingIn(layer: EnteredLayer): string[] {
  const heat = 'missing' in layer.resistance ? [layer.thickness, layer.conductivity] : [];
  const vapour = 'missing' in layer.stillAir ? [layer.vapourFactor, layer.thickness] : [];
  return [...new Set([...heat, ...vapour].flatMap((f) => ('missing' in f ? [f.path] : [])))];
}

/** The layers of a common construction; where a U was entered the layer that insulates takes the difference. */
function usualLayers({ assembly, kind, settings }: ColdSide, s: Scenario, rec?: WorkingRecorder): NamedVapourLayer[] {
  const { common, uValue } = assembly;
  const built = builtAs(assembly, kind, false);
  if (!built || built.by === 'assumed') return unresolved('missing', common.path);
  const stated = s.maybe(uValue);
  const films = bothFilms(filmsIn(settings[0]));
  const even = stated === undefined ? [] : stated > 0 && layersWithResistance(built.choice, 1 / stated - films);
  if (!even) return unresolved('out-of-range', uValue.path);
  return betweenFraming(built.choice).map(({ name, d, k: own, mu }, i) => {
    const scaled = even[i];
    const k = scaled && 'conductivity' in scaled ? scaled.conductivity : own;
    const [resistance, sd] = [d / k, mu * d];
    rec?.step(`R ${name}`, 'd / k', { d, k }, resistance, 'm²K/W', 'loads.materials');
    rec?.step(`sd ${name}`, 'mu * d', { mu, d }, sd, 'm', 'loads.materials');
    return { name, resistance, sd };
  });
}

const source = 'iso-13788.interstitial';

function enteredLayer(name: string, layer: EnteredLayer, s: Scenario, rec?: WorkingRecorder): NamedVapourLayer {
  return { name, resistance: throughHeat(name, layer, s, rec), sd: throughVapour(name, layer, s, rec) };
}

function throughHeat(name: string, layer: EnteredLayer, s: Scenario, rec?: WorkingRecorder): number {
  if (!('missing' in layer.resistance)) {
    rec?.given(`R ${name}`, layer.resistance);
    return s.of(layer.resistance);
  }
  const [d, k] = [s.of(layer.thickness), conducting(layer.conductivity, s)];
  rec?.step(`R ${name}`, 'd / k', { d, k }, d / k, 'm²K/W', source);
  return d / k;
}

function throughVapour(name: string, layer: EnteredLayer, s: Scenario, rec?: WorkingRecorder): number {
  if (!('missing' in layer.stillAir)) {
    rec?.given(`sd ${name}`, layer.stillAir);
    return s.of(layer.stillAir);
  }
  const [mu, d] = [s.of(layer.vapourFactor), s.of(layer.thickness)];
  rec?.step(`sd ${name}`, 'mu * d', { mu, d }, mu * d, 'm', source);
  return mu * d;
}
