// Sources: ISO 13370 and Latta & Boileau, formulas from memory, numbers computed outside the project. See README.md.
import { basementFloorU, basementWallU, crawlU, slabU } from '@kneewall/engine/physics';
import { row, type ValidationSource } from '../src/row.ts';

const id = 'iso-13370';
const house = { area: 95, perimeter: 40, soil: 2, wall: 0.3 };
const crawl = { wallU: 1.7, height: 0.6, vents: 0.0015, wind: 4, windShield: 0.05 };
const rows = [
  ['slab 95 m², bare', 0.787211, slabU(house, 0), 1e-6],
  ['slab 95 m², R 2.5', 0.253461, slabU(house, 2.5), 1e-6],
  ['slab 48 m², R 5', 0.162776, slabU({ area: 48, perimeter: 28, soil: 2, wall: 0.3 }, 5), 1e-6],
  ['crawl space, floor 1.9', 0.774781, crawlU(house, { ...crawl, floorU: 1.9 }), 1e-6],
  ['crawl space, floor 0.30', 0.244039, crawlU(house, { ...crawl, floorU: 0.3 }), 1e-6],
  ...[0.3, 0.6, 0.9, 1.2, 1.5, 1.8, 2.1].map(
    (z, i) =>
      [
        `basement wall ${z} m`,
        [2.4675, 1.8983, 1.5705, 1.3525, 1.1951, 1.075, 0.9799][i] ?? 0,
        basementWallU(z, 0.26),
        1e-4,
      ] as const,
  ),
  ...[6, 7, 8, 9].map(
    (w, i) =>
      [
        `basement floor ${w} m wide`,
        [0.1892, 0.1766, 0.1658, 0.1566][i] ?? 0,
        basementFloorU(w, 2.1, 0.26),
        1e-4,
      ] as const,
  ),
] as const;

export const source: ValidationSource = {
  id,
  title: 'Heat to the ground: ISO 13370 and the basement method',
  measure: () =>
    rows.map(([name, expected, ours, tolerance]) =>
      row({ source: id, case: name, field: 'U', unit: 'W/(m²K)', expected, tolerance, known: 'computed' }, ours),
    ),
};
