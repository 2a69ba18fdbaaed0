// Source: ASHRAE Fundamentals, ventilation and infiltration; worked example from memory, the rest computed. See README.md.
import {
  leakageArea,
  leakageCoefficient,
  leakageFlow,
  leakageFlowBasic,
  normalisedLeakage,
  wallPressureCoefficient,
} from '@kneewall/engine/physics';
import { type How, row, type ValidationSource } from '../src/row.ts';

const id = 'infiltration';
const house = { coefficient: 0.051, exponent: 0.67, storeys: 2, shelter: 4 } as const;
const rows: readonly (readonly [string, string, number, number, number, How])[] = [
  [
    'worked example, two storeys, 500 cm²',
    'm³/s',
    0.0736,
    leakageFlowBasic(500, 2, 3, 39, 6.7),
    0.000736,
    'from memory',
  ],
  ['one storey, 500 cm²', 'm³/s', 0.0376962, leakageFlowBasic(500, 1, 3, 20, 4), 1e-6, 'computed'],
  [
    'enhanced, two storeys, crawl space',
    'm³/s',
    0.0497019,
    leakageFlow({ ...house, crawlSpace: true, flue: false }, 39, 6.7),
    1e-5,
    'computed',
  ],
  [
    'enhanced, with flue, slab',
    'm³/s',
    0.0596136,
    leakageFlow({ ...house, crawlSpace: false, flue: true }, 39, 6.7),
    1e-5,
    'computed',
  ],
  [
    'enhanced, one storey',
    'm³/s',
    0.0276503,
    leakageFlow({ coefficient: 0.05, exponent: 0.65, storeys: 1, crawlSpace: true, flue: false, shelter: 3 }, 30, 5),
    1e-5,
    'computed',
  ],
  ['leakage area of c 0.06', 'm²', 0.0573137, leakageArea(0.06, 0.65, 1.204), 1e-6, 'computed'],
  [
    'coefficient from Q50 1500 m³/h',
    'cm²',
    313.0153,
    leakageArea(leakageCoefficient(1500 / 228, 228, 0.65), 0.65, 1.204) * 1e4,
    0.01,
    'computed',
  ],
  ['normalised leakage, 95 m², 5 m', '', 0.405649, normalisedLeakage(0.03130153, 95, 5), 1e-5, 'computed'],
];

// Degrees between wind and wall, and the mean pressure coefficient that a published table of the formula prints.
const walls = [
  [0, 0.603],
  [30, 0.469],
  [60, 0.119],
  [90, -0.443],
  [120, -0.681],
  [150, -0.39],
  [180, -0.364],
] as const;

export const source: ValidationSource = {
  id,
  title: 'Air leakage of houses: the residential models',
  measure: () => [
    ...rows.map(([name, unit, expected, ours, tolerance, known]) =>
      row({ source: id, case: name, field: 'flow or area', unit, expected, tolerance, known }, ours),
    ),
    ...walls.map(([angle, expected]) =>
      row(
        {
          source: id,
          case: `wall at ${angle}° to the wind`,
          field: 'pressure coefficient',
          unit: '',
          expected,
          tolerance: 0.001,
          known: 'looked up',
        },
        wallPressureCoefficient(angle),
      ),
    ),
  ],
};
