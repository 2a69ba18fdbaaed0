import type { Project, Resolved } from '@kneewall/project';
import { airLayer, type HeatDirection, insideFilm, outsideFilm } from '../../physics/conduction/index.ts';
import type { Material, MaterialId } from './materials.ts';

type House = NonNullable<Project['house']>;
type Assemblies = NonNullable<House['assemblies']>;
/** The common constructions that the document knows. */
export type ConstructionId = NonNullable<Assemblies[string]['common']>;
/** A construction of the document: a U, layers, or a common construction. */
export type Assembly = Resolved<Assemblies>[string];
/** Kinds of surfaces that it knows. */
export type SurfaceKind = NonNullable<NonNullable<House['surfaces']>[string]['kind']>;
/** The ages of houses that it knows. */
export type EraId = NonNullable<House['era']>;

/** A figure at the end that holds heat best, as it usually is, and at the end that holds it worst. */
export type Ends = readonly [best: number, likely: number, worst: number];

export type LayerSpec = {
  readonly material: MaterialId | Material;
  /** m */
  readonly thickness: Ends;
  /** W/(mK) where it is not the material's own. */
  readonly conductivity?: Ends;
  /** Share of framing wood across it. */
  readonly framing?: Ends;
  /** The layer that is given whatever resistance makes up a stated U. */
  readonly insulates?: true;
};

/** Where it stands, which settles its films. */
export type Place = 'wall' | 'ceiling' | 'roof' | 'floor' | 'ground';

/** Layers inside first, and where they and their framing shares are from. */
export type Construction = {
  readonly place: Place;
  readonly layers: readonly LayerSpec[];
  readonly source: string;
};

/** Which way heat goes through a surface in winter, and whether air on its other side is sheltered. */
export type Setting = { readonly direction: HeatDirection; readonly sheltered: boolean };

/** How each place stands: under an attic and over a crawl space the far side is sheltered. */
const settings: Readonly<Record<Place, Setting>> = {
  wall: { direction: 'horizontal', sheltered: false },
  ceiling: { direction: 'up', sheltered: true },
  roof: { direction: 'up', sheltered: false },
  floor: { direction: 'down', sheltered: true },
  ground: { direction: 'down', sheltered: false },
};

/** Films on both sides, m²K/W. */
export type Films = { readonly inside: number; readonly outside: number };

/** Films of a surface as it stands. Source: `iso-6946.films`. */
export function filmsIn({ direction, sheltered }: Setting): Films {
  const inside = insideFilm[direction];
  return { inside, outside: sheltered ? inside : outsideFilm };
}

/** Films that the U of a construction is stated for. */
export const filmsOf = (place: Place): Films => filmsIn(settings[place]);

export const bothFilms = ({ inside, outside }: Films): number => inside + outside;

const ends = (x: number | Ends): Ends => (typeof x === 'number' ? [x, x, x] : x);

/** A layer of one material, m; one figure, or what it may be. */
export const sheet = (material: MaterialId, thickness: number | Ends, conductivity?: Ends): LayerSpec => ({
  material,
  thickness: ends(thickness),
  ...(conductivity ? { conductivity } : {}),
});

/** Insulation, crossed by framing where a share is given. */
export const fill = (
  material: MaterialId,
  thickness: number | Ends,
  framing?: number | Ends,
  conductivity?: Ends,
): LayerSpec => ({
  ...sheet(material, thickness, conductivity),
  ...(framing === undefined ? {} : { framing: ends(framing) }),
  insulates: true,
});

/** An air layer of ISO 6946 as a material; 0.01 m of still air to vapour however thick it is (ISO 13788). */
export const gap = (thickness: number, place: Place, framing: number | Ends): LayerSpec => ({
  material: {
    name: 'Air',
    conductivity: thickness / airLayer(thickness, settings[place].direction),
    density: 1.2,
    heat: 1006,
    mu: 0.01 / thickness,
  },
  thickness: ends(thickness),
  framing: ends(framing),
});
