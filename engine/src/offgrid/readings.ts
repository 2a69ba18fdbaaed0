import type { ExpectedReading } from '../plan/lines.ts';
import type { OffgridResult } from './result.ts';

/** A night's draw with the unit off: idle inverter and what never rests, read at the battery's monitor. */
export function readings({ own, inputs }: OffgridResult): readonly ExpectedReading[] {
  if (!own || !inputs.ok) return [];
  const { idle } = inputs.value.inverter;
  return [
    {
      id: 'offgrid/idle',
      trade: 'offgrid',
      what: 'What the inverter draws with every load switched off',
      how: 'At the battery’s monitor, at night or with the panels’ switch open, every breaker after the inverter off; the mean of five minutes.',
      kind: 'electric-power',
      expected: idle,
      good: { min: 0.6 * idle, max: 1.5 * idle },
      caution: 'Read only; leave covers on. Open the panels’ switch by its handle, never pull a plug under sun.',
    },
  ];
}
