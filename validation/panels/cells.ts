import { cellAbsorbing, cellExponential, cellLinear, cellNominal, mountings } from '@kneewall/engine/physics';
import type { Row } from '../src/row.ts';
import { check } from './check.ts';

const weathers = [
  [900, 20, 5],
  [1000, 25, 1],
  [400, -10, 3],
  [800, 0, 0],
] as const;

const open = { absorbed: 0.9, efficiency: 0.1 };
type At = Parameters<typeof cellLinear>[0];
const models = [
  ['exponential', (at: At) => cellExponential(at, mountings.rack), [43.509, 57.3225, 1.6152, 27.2936]],
  ['linear in the wind', (at: At) => cellLinear(at, 25, 6.84), [35.203, 56.407, -1.2127, 32]],
  ['linear, 22 and 6', (at: At) => cellLinear(at, 22, 6), [37.308]],
  ['absorbing', (at: At) => cellAbsorbing(at, 29, 0, open), [45.137, 52.931, 1.1724]],
  ['absorbing, windy', (at: At) => cellAbsorbing(at, 23.5, 6.25, open), [33.315]],
] as const;

/** °C of the cells; the first of each row looked up, the others computed. */
export const cells = (): Row[] => [
  ...models.flatMap(([model, ours, expected]) =>
    expected.map((t, i) => {
      const [light, air, wind] = weathers[i] ?? weathers[0];
      const name = `${model}, ${light} W/m², ${air} °C, ${wind} m/s`;
      return check(name, 'cell', '°C', [t, 0.001], ours({ light, air, wind }), i === 0 ? 'looked up' : 'computed');
    }),
  ),
  check('nominal 45, 1000 W/m², 20 °C', 'cell', '°C', [51.25, 1e-9], cellNominal({ light: 1000, air: 20 }, 45)),
];
