import type { Task } from '../plan/lines.ts';
import { cards } from './cards.ts';
import type { OffgridResult } from './result.ts';

const minute = 60;

/** What to look after before the unit runs on one's own power, and every autumn. */
export function tasks({ own, inputs }: OffgridResult): readonly Task[] {
  if (!own || !inputs.ok) return [];
  const { generator } = inputs.value;
  return [
    {
      id: 'offgrid/settings',
      ...cards.settings,
      trade: 'offgrid',
      what: 'Set what the inverter and the battery’s own electronics allow: lowest charge, charging off below freezing, what is given up first; write the settings down',
      holdPoint: 'start',
      duration: { low: 20 * minute, likely: 45 * minute, high: 90 * minute },
      people: 1,
      place: 'inside',
      parts: 'any',
      after: [],
      safeStops: ['Any time: covers on'],
      cautions: [
        'Batteries and panels cannot be switched off whole: terminals stay live in sun and at night. Tools insulated, rings off, a second person near; wiring is for a licensed electrician.',
      ],
    },
    ...(generator ? [generatorTask] : []),
  ];
}

const generatorTask: Task = {
  id: 'offgrid/generator',
  ...cards.generator,
  trade: 'offgrid',
  what: 'Start the generator by the rule it will follow, under the load of the unit, for half an hour; check fuel for the dark week',
  holdPoint: 'season',
  duration: { low: 40 * minute, likely: 60 * minute, high: 90 * minute },
  people: 1,
  place: 'outside',
  parts: 'any',
  after: [],
  safeStops: ['Any time: generator stopped, fuel tap shut'],
  cautions: [
    'Its exhaust kills: outdoors only, far from windows and intakes, carbon monoxide alarms inside. Never into the house’s wiring but through a transfer switch. Refuel cold.',
  ],
};
