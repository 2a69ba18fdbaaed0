import type { ExpectedReading } from '../plan/lines.ts';
import type { AccessResult } from './result.ts';

/** The attic's air on a hot afternoon, held against what the limits of work were taken from. */
export function readings({ heat }: AccessResult): readonly ExpectedReading[] {
  // Where the planned hour leaves no work at all, no temperature is named as one to begin at.
  if (!heat.ok || heat.value.minutes === 0) return [];
  const { attic } = heat.value;
  return [
    {
      id: 'access/attic',
      trade: 'access',
      what: 'Air in the attic when work begins',
      how: 'A thermometer in the shade at head height, ten minutes, away from ducts. Warmer than this: do not begin.',
      kind: 'temperature',
      expected: attic,
      good: { min: attic - 60, max: attic },
      caution: 'Never alone. Down at the first headache or dizziness.',
    },
  ];
}
