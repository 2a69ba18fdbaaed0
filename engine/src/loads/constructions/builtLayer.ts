import type { WallLayer } from '../../physics/building/index.ts';
import { combinedResistance, type Layer } from '../../physics/conduction/index.ts';
import { bothFilms, type Films } from './construction.ts';
import { materials } from './materials.ts';

/** A layer as it stands, from the library or as entered: heat through it, and what it weighs. */
export type BuiltLayer = Layer & {
  /** m, kg/m³, J/(kgK) of the fill; left out where only a resistance is known: such a layer holds no heat. */
  readonly body?: { readonly thickness: number; readonly density: number; readonly heat: number };
};

/** m²K/W of even layers, films left out. */
export const resistanceOf = (layers: readonly WallLayer[]): number =>
  layers.reduce((a, l) => a + ('resistance' in l ? l.resistance : l.thickness / l.conductivity), 0);

/**
 * Layers as heat that comes and goes is followed through them, framing spread through the layers it crosses: together
 * they have the resistance that the combined method of ISO 6946 gives the whole, and the mass of fill and wood. Paint and
 * film, which hold no heat back, are left out.
 */
export function evenLayers(layers: readonly BuiltLayer[], films: Films): WallLayer[] {
  const { total } = combinedResistance(layers, films);
  const plain = sum(layers.map((l) => (l.framing ? 0 : l.resistance)));
  const crossed = sum(layers.map((l) => (l.framing ? l.resistance : 0)));
  // What the whole leaves for the crossed layers, shared among them as their clear resistances are.
  const spread = crossed > 0 ? (total - bothFilms(films) - plain) / crossed : 1;
  return layers.flatMap((l): WallLayer[] => {
    const resistance = l.resistance * (l.framing ? spread : 1);
    if (!(resistance > 0)) return [];
    if (!l.body) return [{ resistance }];
    const { thickness } = l.body;
    return [{ thickness, conductivity: thickness / resistance, ...withWood(l.body, l.framing?.share ?? 0) }];
  });
}

/** Density and heat of a fill with a share of wood in it. */
function withWood({ density, heat }: { density: number; heat: number }, share: number) {
  if (share === 0) return { density, heat };
  const { stud } = materials;
  const both = (1 - share) * density + share * stud.density;
  return { density: both, heat: ((1 - share) * density * heat + share * stud.density * stud.heat) / both };
}

/** Every resistance of some layers scaled alike. */
export const scaled = (layers: readonly WallLayer[], factor: number): WallLayer[] =>
  layers.map((l) =>
    'resistance' in l ? { resistance: l.resistance * factor } : { ...l, conductivity: l.conductivity / factor },
  );

const sum = (xs: readonly number[]): number => xs.reduce((a, b) => a + b, 0);
