import { joinedLoss, modulePower } from '@kneewall/engine/physics';
import type { Row } from '../src/row.ts';
import { check } from './check.ts';

const small = { rated: 100, perKelvin: -0.003 };
const large = { rated: 5000, perKelvin: -0.0035 };
const losses = [2, 3, 0, 2, 2, 0.5, 1.5, 1, 0, 3].map((x) => x / 100);

/** W of direct current. */
export const power = (): Row[] => [
  check('900 W/m², 30 °C', 'power', 'W', [88.65, 1e-9], modulePower(900, 30, small), 'looked up'),
  check('100 W/m², dim light', 'power', 'W', [8.9125, 1e-6], modulePower(100, 30, small, 0.01), 'looked up'),
  check('1200 W/m², dim light', 'power', 'W', [118.45, 1e-6], modulePower(1200, 30, small, 0.01), 'looked up'),
  ...(
    [
      [1000, 25, 5000],
      [900, 45, 4185],
      [400, 0, 2175],
      [800, -10, 4490],
    ] as const
  ).map(([g, t, p]) => check(`${g} W/m², ${t} °C`, 'power', 'W', [p, 1e-9], modulePower(g, t, large))),
  check('ten losses', 'loss', '%', [14.0757, 0.0005], 100 * joinedLoss(losses)),
];
