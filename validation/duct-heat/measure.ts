// Source: exponential approach along a run, computed outside the project. See README.md.
import { keptShare, outletTemperature } from '@kneewall/engine/physics';
import { row, type ValidationSource } from '../src/row.ts';
import { deliveredRows } from './delivered.ts';

const id = 'duct-heat';
const celsius = (f: number): number => ((f - 32) * 5) / 9;
// cfm, diameter in, length ft, R in h ft² F/Btu, inlet F, around F, outlet °C
const runs = [
  [200, 8, 25, 4.2, 55, 130, 15.107],
  [200, 8, 25, 6, 55, 130, 14.422],
  [200, 8, 25, 8, 55, 130, 14.017],
  [100, 6, 30, 8, 105, 10, 37.763],
  [100, 6, 30, 8, 105, -10, 37.175],
] as const;

export const source: ValidationSource = {
  id,
  title: 'Heat along a duct through an attic',
  measure: () => [
    ...deliveredRows(id),
    ...runs.map(([cfm, d, l, r, inlet, around, expected]) => {
      const surface = Math.PI * d * 0.0254 * l * 0.3048;
      const kept = keptShare(surface, r * 0.17611018, cfm * 0.47194745e-3 * 1.204);
      return row(
        {
          source: id,
          case: `${cfm} cfm, ${d} in, R-${r}, ${inlet} in ${around} °F`,
          field: 'outlet',
          unit: '°C',
          expected,
          tolerance: 0.02,
          known: 'computed',
        },
        outletTemperature(celsius(inlet), celsius(around), kept),
      );
    }),
  ],
};
