import { inOrder } from '@kneewall/project';
import type { WallLayer } from '../../physics/building/index.ts';
import { type HeatDirection, insideFilm, outsideFilm } from '../../physics/conduction/index.ts';
import type { Scenario } from '../../plan/scenario.ts';
import type { Assembly } from '../assembly.ts';

type Massive = Extract<WallLayer, { thickness: number }>;

// Ordinary boards and boards only: W/(mK), kg/m³, J/(kgK). Source: `loads.masses` (ISO 10456, from memory).
const gypsum: Massive = { thickness: 0.0127, conductivity: 0.25, density: 800, heat: 1000 };
const wood = (thickness: number): Massive => ({ thickness, conductivity: 0.13, density: 500, heat: 1600 });
const fill = { density: 60, heat: 1200, thickness: 0.09 };

/** What is on either side of the insulation, inside first, by kind of surface. */
const skins = {
  wall: { inner: [gypsum], outer: [wood(0.02)] },
  ceiling: { inner: [gypsum], outer: [] },
  roof: { inner: [gypsum], outer: [wood(0.019)] },
  floor: { inner: [wood(0.022)], outer: [] },
  door: { inner: [wood(0.02)], outer: [wood(0.02)] },
} as const;

export type SurfaceKind = keyof typeof skins;

/** Films that the U of a surface counts, m²K/W. Source: `iso-6946.films`. */
export function filmsOf(direction: HeatDirection, sheltered: boolean): number {
  return insideFilm[direction] + (sheltered ? insideFilm[direction] : outsideFilm);
}

const concrete = (thickness: number): Massive => ({ thickness, conductivity: 1.4, density: 2100, heat: 900 });
const plaster: Massive = { thickness: 0.035, conductivity: 0.8, density: 1600, heat: 1000 };
const one = (thickness: number, density: number, heat: number) => (resistance: number) => [
  { thickness, conductivity: thickness / resistance, density, heat },
];
/** A light or heavy core takes what resistance the skins leave. */
const between = (inner: readonly Massive[], core: Omit<Massive, 'conductivity'>, outer: readonly Massive[]) => {
  const skin = [...inner, ...outer].reduce((a, l) => a + l.thickness / l.conductivity, 0);
  return (resistance: number): WallLayer[] => [
    ...inner,
    { ...core, conductivity: core.thickness / Math.max(resistance - skin, 0.05) },
    ...outer,
  ];
};
const foam = { thickness: 0.06, density: 30, heat: 1400 };

/** Constructions that are not boards with something between, by the resistance they have to have. Source: `loads.masses`. */
const bodies: Readonly<Record<string, (resistance: number) => WallLayer[]>> = {
  'wall-stone': one(0.4, 2000, 900),
  'wall-log': one(0.2, 450, 1600),
  'wall-block': one(0.2, 1200, 900),
  'wall-block-foam': between([{ ...concrete(0.2), conductivity: 0.9, density: 1200 }], foam, []),
  'wall-concrete-foam': (resistance) => {
    const core = concrete(0.15);
    const left = resistance - core.thickness / core.conductivity;
    const half = { ...foam, conductivity: foam.thickness / Math.max(left / 2, 0.05) };
    return [half, core, half];
  },
  'wall-straw': between([plaster], { thickness: 0.45, density: 110, heat: 2000 }, [plaster]),
  slab: one(0.1, 2200, 900),
};

/**
 * Layers of a surface that give a U, W/(m²K), films counted, by the common construction named: boards as such houses
 * have them and between them what insulates, with the weight of framing and fill; masonry, logs and the like as they are
 * built. Where the boards alone resist more than the U allows, they are taken to conduct better.
 */
export function layersOfU(kind: SurfaceKind, u: number, films: number, named: string): WallLayer[] {
  const resistance = Math.max(1 / u - films, 0.02);
  const body = bodies[named];
  if (body) return body(resistance);
  const { inner, outer } = skins[kind];
  const boards = [...inner, ...outer].reduce((a, l) => a + l.thickness / l.conductivity, 0);
  const left = resistance - boards;
  if (left <= 0.01) {
    const faster = boards / resistance;
    return [...inner, ...outer].map((l) => ({ ...l, conductivity: l.conductivity * faster }));
  }
  return [...inner, { ...fill, conductivity: fill.thickness / left }, ...outer];
}

/** Layers as entered, every resistance scaled alike so that the whole has the U that its framing gives it. */
export function layersAsEntered(assembly: Assembly, u: number, films: number, s: Scenario): WallLayer[] {
  const plain = inOrder(assembly.layers).map(([, layer]) => plainLayer(layer, s));
  const stated = plain.reduce((a, l) => a + ('resistance' in l ? l.resistance : l.thickness / l.conductivity), 0);
  const factor = Math.max(1 / u - films, 0.02) / stated;
  return plain.map((l) =>
    'resistance' in l ? { resistance: l.resistance * factor } : { ...l, conductivity: l.conductivity / factor },
  );
}

function plainLayer(layer: Assembly['layers'][string], s: Scenario): WallLayer {
  const resistance = s.maybe(layer.resistance);
  const thickness = s.maybe(layer.thickness);
  if (resistance !== undefined && thickness === undefined) return { resistance };
  const size = thickness ?? s.of(layer.thickness);
  const conductivity = resistance === undefined ? s.of(layer.conductivity) : size / resistance;
  const { density, heat } = weightOf(conductivity);
  const stated = (given: typeof layer.density, otherwise: number): number =>
    'missing' in given || given.known === 'assumed' ? otherwise : s.of(given);
  return {
    thickness: size,
    conductivity,
    density: stated(layer.density, density),
    heat: stated(layer.specificHeat, heat),
  };
}

/** Weight of a material nobody weighed, by how it conducts: what insulates is light. Source: `loads.masses` (from memory). */
function weightOf(conductivity: number): { density: number; heat: number } {
  if (conductivity < 0.07) return { density: 30, heat: 1000 };
  if (conductivity < 0.145) return { density: 500, heat: 1600 };
  if (conductivity < 0.35) return { density: 800, heat: 1000 };
  return { density: 2000, heat: 900 };
}
