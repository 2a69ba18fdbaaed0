import type { ExpectedReading } from '../plan/lines.ts';
import type { CondensateResult } from './result.ts';

/** s in which a litre should leave the pan; and the share of full-speed water that a short muggy hour may give. */
const litreMost = 120;

/** A litre poured in, the second way tried, and on a muggy day the water of an hour. */
export function readings({ along, water }: CondensateResult): readonly ExpectedReading[] {
  if (!along.ok) return [];
  return [
    {
      id: 'condensate/fill',
      trade: 'condensate',
      what: 'Time that a litre takes to leave the pan, the trap full',
      how: 'Unit off and locked. Fill the trap first. Pour a litre slowly into the unit’s own pan; stop the clock when nothing more runs at the end.',
      kind: 'time',
      expected: litreMost / 2,
      good: { min: 0, max: litreMost },
      caution: 'Water and electricity: power locked off, nothing poured near wires.',
    },
    ...(water.ok ? [anHour(water.value.high)] : []),
  ];
}

/** Less is normal: the unit seldom runs at full speed, and the air is seldom so damp. */
const anHour = (litres: number): ExpectedReading => ({
  id: 'condensate/water',
  trade: 'condensate',
  what: 'Water from the drain in an hour of muggy weather, unit running',
  how: 'A measuring jug under the end of the drain for twenty minutes, times three; an hour after the start at the earliest. Nothing at all on a damp day means a stopped drain: look into the pan at once.',
  kind: 'volume',
  expected: litres / 2000,
  good: { min: 0, max: litres / 1000 },
});
