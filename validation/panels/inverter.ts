import { inverterOut } from '@kneewall/engine/physics';
import type { Row } from '../src/row.ts';
import { check } from './check.ts';

const rating = { full: 5208.333, nominal: 0.96 };
const table = [
  [50, 18.4818],
  [250, 214.699],
  [500, 459.6218],
  [1000, 948.3055],
  [2500, 2405.0613],
  [4000, 3847.8741],
  [5000, 4802.0031],
  [5208.333, 5000],
  [6000, 5000],
] as const;
const efficiencies = [0.36964, 0.8588, 0.91924, 0.94831, 0.96203, 0.96197, 0.9604, 0.96] as const;

/** W of alternating current. */
export const inverter = (): Row[] => [
  ...table.map(([dc, ac]) => check(`${dc} W in`, 'power', 'W', [ac, 1e-5 * ac], inverterOut(dc, rating))),
  ...efficiencies.map((e, i) => {
    const [dc] = table[i] ?? table[0];
    return check(`${dc} W in`, 'efficiency', '', [e, 1e-5], inverterOut(dc, rating) / dc);
  }),
];
