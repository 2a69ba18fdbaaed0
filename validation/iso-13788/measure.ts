// Source: ISO 13788:2012; sums done outside the project. See README.md.
import {
  interstitial,
  jacketTemperature,
  leastFactor,
  magnusPressure,
  magnusTemperature,
  surfaceFactor,
  vapourExcess,
} from '@kneewall/engine/physics';
import { type How, type Row, row, type ValidationSource } from '../src/row.ts';
import { bruteForceYear } from './bruteForce.ts';
import { films, framedWall, onePlane, thickLayer, tightSkin, twoPlanes, type WallCase } from './walls.ts';

const id = 'iso-13788';
type Check = readonly [field: string, unit: string, expected: number, ours: number, tolerance: number];
const rows = (name: string, known: How, checks: readonly Check[]): Row[] =>
  checks.map(([field, unit, expected, ours, tolerance]) =>
    row({ source: id, case: name, field, unit, expected, tolerance, known }, ours),
  );

const surfaces = [
  { indoor: 20, rh: 0.4, outdoor: -10, dew: 6.0024, wet: 0.533412, mould: 0.642301 },
  { indoor: 21, rh: 0.5, outdoor: -18, dew: 10.1872, wet: 0.722749, mould: 0.809436 },
  { indoor: 21, rh: 0.35, outdoor: 0, dew: 4.9686, wet: 0.236599, mould: 0.390826 },
].flatMap(({ indoor, rh, outdoor, dew, wet, mould }) => {
  const air = { indoor, outdoor, vapour: rh * magnusPressure(indoor) };
  return rows(`${indoor} °C ${rh * 100} %, ${outdoor} °C`, 'computed', [
    ['dew point', '°C', dew, magnusTemperature(air.vapour), 5e-5],
    ['least factor, not wet', '', wet, leastFactor(air, 1) ?? Number.NaN, 5e-7],
    ['least factor, under 80 %', '', mould, leastFactor(air, 0.8) ?? Number.NaN, 5e-7],
  ]);
});

const glassTemperature = (u: number, indoor: number, outdoor: number): number =>
  outdoor + surfaceFactor(1 / u, 0.13) * (indoor - outdoor);
const glass = rows('glass', 'computed', [
  ['single, surface at 20 and -10', '°C', -2.4138, glassTemperature(5.747126, 20, -10), 5e-5],
  ['double, surface at 21 and -18', '°C', 6.804, glassTemperature(2.8, 21, -18), 5e-5],
  ['double, factor', '', 0.636, surfaceFactor(1 / 2.8, 0.13), 5e-7],
]);

/** A duct jacket round air of 13 °C, taken as flat, film 0.10 m²K/W: in a hot attic and on a muggy night. */
const jackets = [
  { attic: 50, r: [0.74, 1.057, 1.409], jacket: [45.5952, 46.8021, 47.548] },
  { attic: 32, r: [0.74, 1.057, 1.409], jacket: [29.7381, 30.3578, 30.7409] },
].flatMap(({ attic, r, jacket }) =>
  rows(
    `duct jacket, attic ${attic} °C`,
    'computed',
    r.map((x, i): Check => [`R ${x}`, '°C', jacket[i] ?? Number.NaN, jacketTemperature(attic, 13, x), 5e-5]),
  ),
);

const ofWall = (c: WallCase) => interstitial(c.layers, films, c.months);

function byHand(): Row[] {
  const one = ofWall(onePlane);
  const two = ofWall(twoPlanes);
  const [plane] = one.planes;
  return [
    ...rows(onePlane.name, 'computed', [
      ['planes', '', 1, one.planes.length, 0],
      ['start month', '', 0, one.start ?? -1, 0],
      ['first cold month', 'kg/m²', 0.8311150704, plane?.gained[0] ?? Number.NaN, 1e-9],
      ['held after three', 'kg/m²', 2.4933452113, plane?.held[2] ?? Number.NaN, 1e-9],
      ['first warm month', 'kg/m²', -0.3188304168, plane?.gained[3] ?? Number.NaN, 1e-9],
      ['held in the eleventh month', 'kg/m²', 0, plane?.held[10] ?? Number.NaN, 0],
      ['the most', 'kg/m²', 2.4933452113, one.most, 1e-9],
      ['left', 'kg/m²', 0, one.left, 0],
      ['entered', 'kg/m²', 0.7766147774, one.entered, 1e-9],
    ]),
    ...rows(twoPlanes.name, 'computed', [
      ['planes', '', 2, two.planes.length, 0],
      ['inner plane', 'kg/m²', 0.7944136076, two.planes[0]?.gained[0] ?? Number.NaN, 1e-9],
      ['outer plane', 'kg/m²', 0.1439087663, two.planes[1]?.gained[0] ?? Number.NaN, 1e-9],
    ]),
    ...rows(thickLayer.name, 'computed', [
      ['gained against the continuous curve', 'kg/m²', 0.04356964695, ofWall(thickLayer).left, 0.01 * 0.04356964695],
    ]),
  ];
}

/** Every plane at the end of every month against the grid, whose hourly steps end with the month as ours do. */
function againstGrid(c: WallCase): Row[] {
  const ours = ofWall(c);
  const grid = bruteForceYear(c.layers, films, c.months, ours.start ?? 0);
  const most = Math.max(...grid.flat());
  const held = (layer: number, k: number): number =>
    ours.planes.find((p) => p.layer === layer)?.held[((ours.start ?? 0) + k) % 12] ?? 0;
  const farthest = grid.flatMap((month, k) => month.map((x, layer) => Math.abs(x - held(layer, k))));
  return rows(`${c.name}, brute force`, 'computed', [
    ['the most at the end of a month', 'kg/m²', most, Math.max(...ours.planes.flatMap((p) => p.held)), 1e-6 * most],
    ['farthest of all planes and months', 'kg/m²', 0, Math.max(...farthest), 1e-6 * most],
    ['planes', '', planesOf(grid), ours.planes.length, 0],
    ['entered less leaving less left', 'kg/m²', 0, ours.entered - ours.leaving - ours.left, 1e-12],
  ]);
}

const planesOf = (grid: readonly number[][]): number =>
  (grid[0] ?? []).filter((_, layer) => grid.some((month) => (month[layer] ?? 0) > 0)).length;

const classes = rows('humidity classes', 'from memory', [
  ['class 1 at 0 °C', 'Pa', 270, vapourExcess(1, 0), 0],
  ['class 2 at 0 °C', 'Pa', 540, vapourExcess(2, 0), 0],
  ['class 3 at -10 °C', 'Pa', 810, vapourExcess(3, -10), 0],
  ['class 4 at 10 °C', 'Pa', 540, vapourExcess(4, 10), 1e-9],
  ['class 5 at 20 °C', 'Pa', 0, vapourExcess(5, 20), 0],
]);

export const source: ValidationSource = {
  id,
  title: 'Moisture in constructions: ISO 13788',
  measure: () => [
    ...surfaces,
    ...glass,
    ...jackets,
    ...byHand(),
    ...[framedWall, tightSkin].flatMap(againstGrid),
    ...classes,
  ],
};
