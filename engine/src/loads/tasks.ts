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
        'Old loose insulation may hold asbestos: do not stir grey or gold flakes before they are tested.',
        'Walk on joists or boards only; keep off old wiring and have damaged wiring seen to by a licensed electrician.',
      ],
    },
  ];
}
