import {
  incidenceDiffuse,
  incidenceExponential,
  incidenceFifth,
  incidencePhysical,
  incidenceReciprocal,
} from '@kneewall/engine/physics';
import type { How, Row } from '../src/row.ts';
import { check } from './check.ts';

const glass = { index: 1.526, extinction: 4, thickness: 0.002 };
const cosine = (angle: number): number => Math.cos((angle * Math.PI) / 180);

const forms = [
  ['reciprocal', (x: number) => incidenceReciprocal(x, 0.05)],
  ['physical', (x: number) => incidencePhysical(x, glass)],
  ['exponential', (x: number) => incidenceExponential(cosine(x), 0.16)],
  ['fifth power', incidenceFifth],
] as const;

const table = [
  [0, [1, 1, 1, 1]],
  [30, [0.99226497, 0.99788686, 0.9974658, 0.999957]],
  [45, [0.97928932, 0.98797788, 0.98986965, 0.997845]],
  [60, [0.95, 0.94600291, 0.95791227, 0.96875]],
  [70, [0.90380978, 0.85972019, 0.88377158, 0.876672]],
  [80, [0.76206148, 0.63411669, 0.66348076, 0.614677]],
  [67.5, [0.9193437, 0.8893998]],
  [22.5, [0.99588039, 0.99926198]],
] as const;

const lookedUp = (angle: number, column: number): How =>
  ([22.5, 45, 67.5].includes(angle) && column < 2) || (angle === 45 && column === 2) ? 'looked up' : 'computed';

const even = [
  [30, 0.954974, 0.794443],
  [45, 0.956858, 0.882989],
  [90, 0.95146, 0.95146],
] as const;

/** Share of light that enters the glass. */
export const angles = (): Row[] => [
  ...table.flatMap(([angle, expected]) =>
    expected.map((truth, i) => {
      const [form, ours] = forms[i] ?? forms[0];
      return check(`${angle} degrees`, form, '', [truth, 1e-6], ours(angle), lookedUp(angle, i));
    }),
  ),
  ...(
    [
      [22.5, 0.99944171],
      [45, 0.9917463],
      [67.5, 0.91506158],
    ] as const
  ).map(([angle, truth]) =>
    check(
      `${angle} degrees`,
      'coated',
      '',
      [truth, 1e-6],
      incidencePhysical(angle, { ...glass, coating: 1.29 }),
      'looked up',
    ),
  ),
  ...even.flatMap(([tilt, sky, ground]) => [
    check(`tilt ${tilt}`, 'sky', '', [sky, 1e-6], incidenceDiffuse(tilt, 0.16).sky),
    check(`tilt ${tilt}`, 'ground', '', [ground, 1e-6], incidenceDiffuse(tilt, 0.16).ground),
  ]),
];
