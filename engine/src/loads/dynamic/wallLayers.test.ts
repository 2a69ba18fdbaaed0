import { type Project, resolveProject } from '@kneewall/project';
import { describe, expect, it } from 'vitest';
import type { WallLayer } from '../../physics/building/index.ts';
import { attempt } from '../../plan/outcome.ts';
import { scenario } from '../../plan/scenario.ts';
import { assemblyU, settingOf } from '../assembly.ts';
import { bothFilms, filmsIn, resistanceOf, type SurfaceKind } from '../constructions/index.ts';
import { surfaceLayers } from './wallLayers.ts';

const is = (value: number) => ({ value, known: 'assumed' as const });
const layer = (order: string, thickness: number, conductivity: number, more: object = {}) => ({
  order,
  thickness: is(thickness),
  conductivity: is(conductivity),
  ...more,
});
const board = layer('a', 0.0127, 0.16, { density: is(800), specificHeat: is(1090) });
const wool = layer('c', 0.14, 0.04, { density: is(20), specificHeat: is(840), framing: { share: is(0.2) } });
const film = { order: 'b', resistance: is(0), stillAir: is(50) };

function built(assembly: object, kind: SurfaceKind = 'wall', other = 'outdoors') {
  const project = { house: { assemblies: { x: assembly } } } as unknown as Project;
  const { x } = resolveProject(project).house.assemblies;
  if (!x) throw new Error('an assembly');
  const setting = settingOf(kind, other);
  const s = scenario();
  const layers = attempt(() => surfaceLayers(x, { kind, ground: other === 'ground', setting }, s));
  return { layers, u: attempt(() => assemblyU(x, setting, s)), films: bothFilms(filmsIn(setting)) };
}
const massOf = (layers: readonly WallLayer[]): number =>
  layers.reduce((a, l) => a + ('density' in l ? l.thickness * l.density : 0), 0);
const layersIn = (assembly: object, kind?: SurfaceKind, other?: string): readonly WallLayer[] => {
  const { layers } = built(assembly, kind, other);
  if (!layers.ok) throw new Error(layers.paths.join());
  return layers.value;
};

describe('layers of a surface', () => {
  it('are those entered, with their wood and what they were said to weigh', () => {
    const layers = layersIn({ common: 'wall-stone', layers: { board, wool } });
    // 0.0127 x 800 + 0.14 x (0.8 x 20 + 0.2 x 500)
    expect(massOf(layers)).toBeCloseTo(26.4, 9);
    expect(layersIn({ layers: { board, film, wool } })).toEqual(layers);
  });

  it.each([
    ['own layers', { layers: { board, wool } }],
    ['own layers with a U beside them', { uValue: is(0.5), layers: { board, wool } }],
    ['a common construction', { common: 'wall-log' }],
    ['a common construction brought to a U', { common: 'wall-log', uValue: is(0.5) }],
    ['a U alone', { uValue: is(0.5) }],
  ])('have the U of the steady sums: %s', (_, assembly) => {
    for (const [kind, other] of [
      ['wall', 'outdoors'],
      ['wall', 'attic'],
      ['ceiling', 'attic'],
      ['floor', 'below'],
    ] as const) {
      const { layers, u, films } = built(assembly, kind, other);
      if (!layers.ok || !u.ok) throw new Error('known');
      expect(1 / (films + resistanceOf(layers.value))).toBeCloseTo(u.value, 12);
    }
  });

  it('keep their weight when a U stands beside them', () => {
    expect(massOf(layersIn({ uValue: is(0.9), layers: { board, wool } }))).toBeCloseTo(26.4, 9);
  });

  it('are by kind and nearness where a U stands alone', () => {
    const same = (assembly: object, common: string, kind: SurfaceKind, other: string) =>
      expect(massOf(layersIn(assembly, kind, other))).toBeCloseTo(massOf(layersIn({ common }, kind, other)), 9);
    same({ uValue: is(0.34) }, 'wall-r19', 'wall', 'outdoors');
    same({ uValue: is(0.34) }, 'ceiling-r19', 'ceiling', 'attic');
    same({ uValue: is(2.4) }, 'wall-block', 'wall', 'ground');
    same({ uValue: is(2.4) }, 'slab', 'floor', 'ground');
  });

  it('are out of range where nothing holds heat, or films alone hold more than the U lets by', () => {
    for (const assembly of [
      { layers: { film } },
      { uValue: is(1), layers: { film } },
      { uValue: is(0) },
      { uValue: is(6) },
      { uValue: { value: { low: 4, likely: 5, high: 6 }, known: 'assumed' } },
      { layers: { board: layer('a', 0.01, 0) } },
    ])
      expect(built(assembly).layers).toMatchObject({ ok: false, because: 'out-of-range' });
    expect(built({ layers: { board: { order: 'a' } } }).layers).toMatchObject({ ok: false, because: 'missing' });
  });
});
