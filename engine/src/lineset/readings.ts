import type { ExpectedReading } from '../plan/lines.ts';
import type { LinesetResult } from './result.ts';

/** The rope's length before the order, and the charge that was added. */
export function readings({ needed, added }: LinesetResult): readonly ExpectedReading[] {
  return [
    ...(needed.ok
      ? [
          {
            id: 'lineset/rope',
            trade: 'lineset' as const,
            what: 'Length of a rope laid along the whole way of the line',
            how: 'From coupling to coupling, through the sleeve, with bends as wide as the line will take. The plan’s figure holds its spare.',
            kind: 'length' as const,
            expected: needed.value.likely,
            good: { min: 0, max: needed.value.high },
          },
        ]
      : []),
    ...(added.ok && added.value > 0
      ? [
          {
            id: 'lineset/added',
            trade: 'lineset' as const,
            what: 'Refrigerant added for the length of the line',
            how: 'By the licensed person, on a scale, written on the unit’s label. A pre-charged set holds its own: ask before anything is added.',
            kind: 'mass' as const,
            expected: added.value,
            good: { min: 0.9 * added.value, max: 1.1 * added.value },
            caution: 'Licensed work: pressure, frost and fire.',
          },
        ]
      : []),
  ];
}
