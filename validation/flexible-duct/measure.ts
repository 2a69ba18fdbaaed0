// Source: Abushakra, Walker and Sherman 2004; fit from memory, its size looked up in the abstract. See README.md.
import { compressionFactor } from '@kneewall/engine/physics';
import { row, type ValidationSource } from '../src/row.ts';

const id = 'flexible-duct';
const compressions = [0.04, 0.1, 0.15, 0.2, 0.3];
const table = [
  [6, 2.089, 3.723, 5.085, 6.447, 9.17],
  [8, 1.847, 3.117, 4.175, 5.233, 7.35],
  [10, 1.658, 2.645, 3.468, 4.29, 5.936],
] as const;

const ours = (inches: number, compression: number): number => compressionFactor(compression, inches * 0.0254);

export const source: ValidationSource = {
  id,
  title: 'Flexible duct: what slack costs',
  measure: () => [
    ...table.flatMap(([d, ...factors]) =>
      factors.map((expected, i) =>
        row(
          {
            source: id,
            case: `${d} in, ${(compressions[i] ?? 0) * 100} %`,
            field: 'factor',
            unit: '',
            expected,
            tolerance: 0.001 * expected,
            known: 'from memory',
          },
          ours(d, compressions[i] ?? 0),
        ),
      ),
    ),
    row(
      {
        source: id,
        case: 'typical of the field, 8 in, 15 %',
        field: 'factor',
        unit: '',
        low: 3,
        high: 5,
        tolerance: 0,
        known: 'looked up',
      },
      ours(8, 0.15),
    ),
    row(
      {
        source: id,
        case: 'further compression, 6 in, 30 %',
        field: 'factor',
        unit: '',
        low: 8,
        high: 10.5,
        tolerance: 0,
        known: 'looked up',
      },
      ours(6, 0.3),
    ),
  ],
};
