// Source: a real house's weekly gas before and after its cavity walls were filled. See README.md.
import { changeInTime, leastSquares } from '@kneewall/engine/physics';
import { checker } from '../src/checker.ts';
import type { Row, ValidationSource } from '../src/row.ts';

const id = 'real-house';
const check = checker(id);

/** Mean outdoor temperature of a week, °C, and gas, thousands of cubic feet; each season by temperature. */
const before = [
  [-0.8, 7.2],
  [-0.7, 6.9],
  [0.4, 6.4],
  [2.5, 6.0],
  [2.9, 5.8],
  [3.2, 5.8],
  [3.6, 5.6],
  [3.9, 4.7],
  [4.2, 5.8],
  [4.3, 5.2],
  [5.4, 4.9],
  [6.0, 4.9],
  [6.0, 4.3],
  [6.0, 4.4],
  [6.2, 4.5],
  [6.3, 4.6],
  [6.9, 3.7],
  [7.0, 3.9],
  [7.4, 4.2],
  [7.5, 4.0],
  [7.5, 3.9],
  [7.6, 3.5],
  [8.0, 4.0],
  [8.5, 3.6],
  [9.1, 3.1],
  [10.2, 2.6],
] as const;
const after = [
  [-0.7, 4.8],
  [0.8, 4.6],
  [1.0, 4.7],
  [1.4, 4.0],
  [1.5, 4.2],
  [1.6, 4.2],
  [2.3, 4.1],
  [2.5, 4.0],
  [2.5, 3.5],
  [3.1, 3.2],
  [3.9, 3.9],
  [4.0, 3.5],
  [4.0, 3.7],
  [4.2, 3.5],
  [4.3, 3.5],
  [4.6, 3.7],
  [4.7, 3.5],
  [4.9, 3.4],
  [4.9, 3.7],
  [4.9, 4.0],
  [5.0, 3.6],
  [5.3, 3.7],
  [6.2, 2.8],
  [7.1, 3.0],
  [7.2, 2.8],
  [7.5, 2.6],
  [8.0, 2.7],
  [8.7, 2.8],
  [8.8, 1.3],
  [9.7, 1.5],
] as const;

type Weeks = readonly (readonly [number, number])[];
const fitOf = (weeks: Weeks) =>
  leastSquares(
    [weeks.map(([t]) => t), weeks.map(() => 1)],
    weeks.map(([, gas]) => gas),
  );

function lines(name: string, weeks: Weeks, slope: number, intercept: number, error: number): Row[] {
  const fit = fitOf(weeks);
  return [
    check(name, 'gas for each degree', '1000 ft³/(week K)', slope, 1e-4, fit?.coefficients[0]),
    check(name, 'gas at 0 °C', '1000 ft³/week', intercept, 1e-4, fit?.coefficients[1]),
    check(name, 'error of the slope', '1000 ft³/(week K)', error, 1e-4, fit?.standardErrors[0]),
  ];
}

/** Both seasons one after the other: the change is where the walls were filled. */
function change(): Row[] {
  const weeks: Weeks = [...before, ...after];
  const found = changeInTime(
    [Float64Array.from(weeks, ([t]) => t), new Float64Array(weeks.length).fill(1)],
    Float64Array.from(weeks, ([, gas]) => gas),
    1,
  );
  const name = 'both seasons, the walls filled between them';
  // By the two lines at the mean of all weeks.
  const at = weeks.reduce((a, [t]) => a + t, 0) / weeks.length;
  const less = (4.72385 - 0.27793 * at) / (6.85383 - 0.39324 * at) - 1;
  return [
    check(name, 'first week after the change', '', before.length, 0.5, found?.from),
    check(name, 'gas less than before', '', less, 0.02, found?.share),
    check(name, 'whether it is told: chance under 0.05', '', 1, 0, found && found.chance <= 0.05 ? 1 : 0),
  ];
}

export const source: ValidationSource = {
  id,
  title: 'A real house before and after its walls were filled: regression, and the change found',
  measure: () => [
    ...lines('weeks before', before, -0.39324, 6.85383, 0.01959),
    ...lines('weeks after', after, -0.27793, 4.72385, 0.02518),
    ...change(),
  ],
};
