// Source: Fresnel and Bouguer for the standard test glass, computed outside the project. See README.md.
import { commonPane, glassOptics } from '@kneewall/engine/physics';
import { row, type ValidationSource } from '../src/row.ts';
import truth from './truth.json' with { type: 'json' };

const id = 'glazing';
const fields = [
  'single transmittance',
  'single reflectance',
  'single absorptance',
  'double transmittance',
  'double reflectance',
  'outer pane',
  'inner pane',
] as const;

export const source: ValidationSource = {
  id,
  title: 'Glass at an angle',
  measure: () =>
    truth.flatMap(([angle = 0, ...expected]) => {
      const one = glassOptics(commonPane, 1, angle);
      const two = glassOptics(commonPane, 2, angle);
      const ours = [
        one.transmittance,
        one.reflectance,
        one.absorbed[0] ?? 0,
        two.transmittance,
        two.reflectance,
        two.absorbed[0] ?? 0,
        two.absorbed[1] ?? 0,
      ];
      return fields.map((field, i) =>
        row(
          {
            source: id,
            case: `${angle} degrees`,
            field,
            unit: '',
            expected: expected[i] ?? 0,
            tolerance: 1e-4,
            known: 'computed',
          },
          ours[i] ?? 0,
        ),
      );
    }),
};
