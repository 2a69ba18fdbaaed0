// Source: leakage classes of ducts, from memory; code limits looked up. See README.md.
import { leakAt, leakageOfClass } from '@kneewall/engine/physics';
import { type How, row, type ValidationSource } from '../src/row.ts';

const id = 'leakage';
const inchWater = 249.08891;
const cfmPer100 = 0.47194745e-3 / (100 * 0.3048 ** 2);
const classes = [
  [3, 0.6732],
  [6, 1.3464],
  [12, 2.6928],
  [24, 5.3857],
  [48, 10.7714],
] as const;

export const source: ValidationSource = {
  id,
  title: 'Leakage of ducts: classes',
  measure: () => [
    ...classes.map(([c]) =>
      check(
        `class ${c} at 1 inH2O`,
        'cfm/100 ft²',
        c,
        1e-6 * c,
        leakageOfClass(c, inchWater) / cfmPer100,
        'from memory',
      ),
    ),
    ...classes.map(([c, expected]) =>
      check(`class ${c} at 25 Pa`, 'cfm/100 ft²', expected, 1e-4 * expected, leakageOfClass(c, 25) / cfmPer100),
    ),
    check('class 6 at 1 Pa', 'L/(s m²)', 0.0084408, 8e-7, leakageOfClass(6, 1) * 1000),
    check('class 6 taken from 1 inH2O to 25 Pa', 'cfm/100 ft²', 1.3464, 1.3e-4, leakAt(6, inchWater, 25)),
  ],
};

function check(name: string, unit: string, expected: number, tolerance: number, ours: number, known: How = 'computed') {
  return row({ source: id, case: name, field: 'leak', unit, expected, tolerance, known }, ours);
}
