// Sources: ASHRAE Fundamentals 2017 ch. 1 (looked up, as quoted in psychrolib's tests) and psychrolib 2.5 (computed). See README.md.
import {
  type MoistAir,
  moistAir,
  type SecondProperty,
  saturationPressure,
  saturationRatio,
  standardPressure,
} from '@kneewall/engine/physics';
import { type Row, row, type ValidationSource } from '../src/row.ts';
import { handbook } from './handbook.ts';
import truth from './truth.json' with { type: 'json' };

const id = 'psychrometrics';
/** Absolute tolerance by field, relative ones as a share. */
const tolerances: Readonly<Record<string, (expected: number) => number>> = {
  // The page prints 7 decimals: half of the last one counts beside the 5e-6 asked for.
  w: (x) => 5e-6 * x + 6e-8,
  vapourPressure: (x) => 5e-6 * x + 0.006,
  rh: () => 1e-5,
  dewPoint: () => 0.005,
  wetBulb: () => 0.005,
  enthalpy: () => 0.01,
  volume: () => 1e-5,
};

const table = (): Row[] => [
  ...truth.saturationPressure.map(([t = 0, p = 0, tolerance = 0]) =>
    row(
      {
        source: id,
        case: `saturation ${t} °C`,
        field: 'pressure',
        unit: 'Pa',
        expected: p,
        tolerance,
        known: 'looked up',
      },
      saturationPressure(t),
    ),
  ),
  ...truth.saturationRatio.map(([t = 0, w = 0, share = 0]) =>
    row(
      {
        source: id,
        case: `saturation ${t} °C`,
        field: 'humidity ratio',
        unit: 'kg/kg',
        expected: w,
        tolerance: share * w,
        known: 'looked up',
      },
      saturationRatio(t, 101_325),
    ),
  ),
  ...truth.atmosphere.map(([z = 0, p = 0]) =>
    row(
      {
        source: id,
        case: `atmosphere ${z} m`,
        field: 'pressure',
        unit: 'Pa',
        expected: p,
        tolerance: 1,
        known: 'looked up',
      },
      standardPressure(z),
    ),
  ),
];

const states = (): Row[] =>
  truth.states.flatMap((s, n) => {
    const ours = moistAir({ t: s.t, [s.second]: s.value } as { t: number } & SecondProperty, s.pressure);
    return Object.entries(tolerances).map(([field, tolerance]) => {
      const expected = s[field as keyof typeof s] as number;
      return row(
        {
          source: id,
          case: `state ${n + 1}`,
          field,
          unit: '',
          expected,
          tolerance: tolerance(expected),
          known: 'computed',
        },
        ours[field as keyof MoistAir],
      );
    });
  });

export const source: ValidationSource = {
  id,
  title: 'Moist air: handbook tables and the general library',
  measure: () => [...table(), ...states(), ...handbook(id)],
};
