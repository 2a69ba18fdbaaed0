// Source: ISO 6946:2017, formulas; results computed outside the project. See README.md.
import { airLayer, combinedResistance, insideFilm, type Layer, outsideFilm } from '@kneewall/engine/physics';
import { type Row, row, type ValidationSource } from '../src/row.ts';

const id = 'iso-6946';
const solid = (thickness: number, conductivity: number): Layer => ({ resistance: thickness / conductivity });
const crossed = (thickness: number, conductivity: number, share: number, wood: number): Layer => ({
  ...solid(thickness, conductivity),
  framing: { share, resistance: thickness / wood },
});
const wall = { inside: insideFilm.horizontal, outside: outsideFilm };
const ceiling = { inside: insideFilm.up, outside: insideFilm.up };

const cases = [
  { name: 'solid wood 40 mm', layers: [solid(0.04, 0.13)], films: wall, u: 2.093398 },
  {
    name: 'gypsum, wool 89 mm, board',
    layers: [solid(0.0127, 0.25), solid(0.089, 0.04), solid(0.012, 0.13)],
    films: wall,
    u: 0.393994,
  },
  {
    name: 'brick, cavity, block, plaster',
    layers: [solid(0.102, 0.77), { resistance: airLayer(0.05, 'horizontal') }, solid(0.1, 0.51), solid(0.013, 0.57)],
    films: wall,
    u: 1.425816,
  },
  { name: 'ceiling, loose wool 200 mm', layers: [solid(0.0127, 0.25), solid(0.2, 0.045)], films: ceiling, u: 0.212981 },
  {
    name: 'floor over vented crawl space',
    layers: [solid(0.018, 0.13), solid(0.14, 0.04)],
    films: { inside: insideFilm.down, outside: insideFilm.down },
    u: 0.251353,
  },
  { name: 'single glass 4 mm', layers: [solid(0.004, 1)], films: wall, u: 5.747126 },
  {
    name: 'stud wall, combined',
    layers: [solid(0.0127, 0.16), crossed(0.089, 0.038, 0.23, 0.13), solid(0.011, 0.13), solid(0.013, 0.11)],
    films: wall,
    u: 0.493936,
    upper: 2.092542,
    lower: 1.956567,
  },
  {
    name: 'ceiling between joists, combined',
    layers: [solid(0.0127, 0.16), crossed(0.184, 0.04, 0.1, 0.13)],
    films: ceiling,
    u: 0.24564,
    upper: 4.107531,
    lower: 4.034477,
  },
] as const;

const measureOne = (c: (typeof cases)[number]): Row[] => {
  const r = combinedResistance(c.layers, c.films);
  const say = (field: string, expected: number, ours: number) =>
    row(
      {
        source: id,
        case: c.name,
        field,
        unit: field === 'U' ? 'W/(m²K)' : 'm²K/W',
        expected,
        tolerance: 1e-6,
        known: 'computed',
      },
      ours,
    );
  return [
    say('U', c.u, 1 / r.total),
    ...('upper' in c ? [say('upper limit', c.upper, r.upper), say('lower limit', c.lower, r.lower)] : []),
  ];
};

export const source: ValidationSource = {
  id,
  title: 'Heat through layers: ISO 6946',
  measure: () => cases.flatMap(measureOne),
};
