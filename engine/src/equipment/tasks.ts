import { atticWork } from '../plan/cautions.ts';
import type { Task } from '../plan/lines.ts';
import { cards } from './cards.ts';
import type { EquipmentResult } from './result.ts';

const minute = 60;

/** Receiving the unit and setting it up; lifting and wiring are other trades' work. */
export function tasks({ chosen }: EquipmentResult): readonly Task[] {
  if (!chosen.ok) return [];
  return [
    {
      id: 'equipment/receive',
      ...cards.receive,
      trade: 'equipment',
      what: 'Unpack enough to read both nameplates against the order; photograph them; look for dents; keep it upright',
      holdPoint: 'order',
      duration: { low: 20 * minute, likely: 40 * minute, high: 60 * minute },
      people: 2,
      place: 'outside',
      parts: 'any',
      after: [],
      safeStops: ['Any time: crates closed, upright, under a roof'],
      cautions: ['The outdoor unit holds gas under pressure: no drilling, no tilting beyond what the crate says.'],
    },
    {
      id: 'equipment/settings',
      ...cards.settings,
      trade: 'equipment',
      what: 'Make the settings: airflow, sensor place, fan in defrost, backup strips locked out, return after a power cut; write them down',
      holdPoint: 'start',
      duration: { low: 20 * minute, likely: 40 * minute, high: 90 * minute },
      people: 1,
      place: 'attic',
      parts: 'any',
      after: ['equipment/receive'],
      safeStops: ['Any time: power locked off'],
      cautions: [
        'Covers off means live parts: isolate and prove dead first, or leave it to a licensed electrician.',
        ...atticWork,
      ],
    },
  ];
}
