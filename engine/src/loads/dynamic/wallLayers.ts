import { inOrder } from '@kneewall/project';
import type { WallLayer } from '../../physics/building/index.ts';
import { unresolved } from '../../plan/outcome.ts';
import type { Scenario } from '../../plan/scenario.ts';
import {
  type Assembly,
  bothFilms,
  builtAs,
  commonU,
  enteredLayers,
  evenLayers,
  filmsIn,
  filmsOf,
  layersWithResistance,
  library,
  resistanceOf,
  type Setting,
  type SurfaceKind,
  scaled,
} from '../constructions/index.ts';

/** A surface of a construction: its kind, whether earth lies behind it, and its films. */
export type Standing = { readonly kind: SurfaceKind; readonly ground: boolean; readonly setting: Setting };

/**
 * Even layers of a surface, inside first, with the U that the steady sums give it: the layers entered, brought to the U
 * where one was entered beside them; else those of the common construction chosen; else, where there is a U alone, those
 * of the construction of its kind that is nearest to it.
 */
export function surfaceLayers(assembly: Assembly, at: Standing, s: Scenario): WallLayer[] {
  const films = filmsIn(at.setting);
  const stated = 'missing' in assembly.uValue ? undefined : statedResistance(assembly, bothFilms(films), s);
  if (Object.keys(assembly.layers).length > 0) {
    const own = evenLayers(enteredLayers(assembly, s), films);
    const [[, innermost] = []] = inOrder(assembly.layers);
    if (own.length === 0 && innermost) return unresolved('out-of-range', innermost.resistance.path);
    return stated === undefined ? own : scaled(own, stated / resistanceOf(own));
  }
  const built = builtAs(assembly, at.kind, at.ground);
  if (!built || 'missing' in assembly.common) return unresolved('missing', assembly.common.path);
  const resistance = stated ?? 1 / s.of(commonU(assembly.common)) - bothFilms(filmsOf(library[built.choice].place));
  return layersWithResistance(built.choice, resistance) ?? unresolved('out-of-range', assembly.common.path);
}

/** m²K/W that a stated U leaves for the layers; out of range at 0, and where at its high end the films alone hold more. */
function statedResistance({ uValue }: Assembly, films: number, s: Scenario): number {
  if ('missing' in uValue || !(uValue.low > 0) || 1 / uValue.high <= films)
    return unresolved('out-of-range', uValue.path);
  return 1 / s.of(uValue) - films;
}
