import { atticWork } from '../plan/cautions.ts';
import type { Task } from '../plan/lines.ts';
import { cards } from './cards.ts';
import type { LoadsResult } from './result.ts';

const hour = 3600;

/** Sealing the attic floor comes before anything is laid over it. */
export function tasks(result: LoadsResult): readonly Task[] {
  if (!result.attic.ok) return [];
  return [
    {
      id: 'loads/seal-attic-floor',
      ...cards['seal-attic-floor'],
      trade: 'loads',
      what: 'Seal the attic floor: wire holes, wall tops, the hatch, round the flue with metal and high-temperature sealant',
      holdPoint: 'close',
      duration: { low: 3 * hour, likely: 6 * hour, high: 12 * hour },
      people: 2,
      place: 'attic',
      parts: 'any',
      after: [],
      safeStops: ['Any time: insulation raked back over, hatch closed or guarded'],
      cautions: [
        ...atticWork,
        'A tighter house leaves a stove, boiler or water heater less air: have its draught tested with everything that blows out running, before and after, and hang alarms for carbon monoxide.',
        'Damaged wiring is for a licensed electrician; keep insulation off a flue as far as its maker and the code say.',
      ],
    },
  ];
}
