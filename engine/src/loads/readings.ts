import type { Conditions, ExpectedReading } from '../plan/lines.ts';
import { atticTemperature } from './attic.ts';
import type { LoadsResult } from './result.ts';

/** The attic's air at night, without sun: it tells whether vents and ceiling are what was entered. */
export function readings(result: LoadsResult, conditions: Conditions): readonly ExpectedReading[] {
  if (!result.attic.ok || conditions.mode !== 'heating') return [];
  const expected = atticTemperature(result.attic.value, { ...conditions, ductHeat: 0 });
  const width = Math.max(2, 0.25 * (conditions.indoor - conditions.outdoor));
  return [
    {
      id: 'loads/attic-air',
      trade: 'loads',
      what: 'Attic air two hours before sunrise',
      how: 'Hang a thermometer in the middle of the attic, off the ducts and out of reach of the hatch; read it after a still night with the unit off.',
      kind: 'temperature',
      expected,
      good: { min: expected - width, max: expected + width },
    },
  ];
}
