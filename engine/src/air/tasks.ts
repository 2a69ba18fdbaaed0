import { atticWork } from '../plan/cautions.ts';
import type { Task } from '../plan/lines.ts';
import { damperPlaces } from './balance/places.ts';
import { cards } from './cards.ts';
import { doorTasks } from './doors/doorWork.ts';
import type { AirResult } from './result.ts';

const minute = 60;

/** Hanging, sealing and testing the ducts. Each run is its own safe stop. */
export function tasks({ model, shut }: AirResult): readonly Task[] {
  if (!model.ok) return [];
  const runs = model.value.sections.length;
  const places = damperPlaces(model.value);
  const collars = places.filter((p) => p.at === 'collar').length;
  const each = (low: number, likely: number, high: number) => ({
    low: runs * low * minute,
    likely: runs * likely * minute,
    high: runs * high * minute,
  });
  return [
    {
      id: 'air/hang',
      ...cards.hang,
      trade: 'air',
      what: 'Hang the ducts: pull each flexible run tight, a saddle every 4 ft, bends no tighter than one diameter',
      holdPoint: 'connect',
      duration: each(20, 35, 70),
      people: 2,
      place: 'attic',
      parts: runs,
      after: [],
      safeStops: ['After each run: both ends fixed and capped, hatch guarded'],
      cautions: atticWork,
    },
    {
      id: 'air/ports',
      ...cards.ports,
      trade: 'air',
      what: 'Drill the two test ports: one in the return box before the filter’s far side, one in the supply plenum past the coil; plug them',
      holdPoint: 'cut',
      duration: { low: 10 * minute, likely: 20 * minute, high: 30 * minute },
      people: 1,
      place: 'attic',
      parts: 'any',
      after: ['air/hang'],
      safeStops: ['Any time: ports plugged'],
      cautions: ['Keep the drill away from coil, drain pan and wires; power locked off.', ...atticWork],
    },
    {
      id: 'air/seal',
      ...cards.seal,
      trade: 'air',
      what: 'Seal every collar, seam and the cabinet with mastic, and let it cure',
      holdPoint: 'close',
      duration: each(10, 20, 40),
      people: 2,
      place: 'attic',
      parts: runs,
      after: ['air/hang', 'air/ports'],
      safeStops: ['After each joint: tub closed, lamp off, hatch guarded'],
      cautions: atticWork,
    },
    ...(shut.ok ? doorTasks(shut.value.ways) : []),
    ...(places.length > 1 ? balancing(collars, places.length) : []),
  ];
}

/** A damper is no use where no hand gets to it; a room alone needs none. */
const balancing = (collars: number, places: number): Task[] => [
  ...(collars > 0
    ? [
        {
          id: 'air/dampers',
          ...cards.dampers,
          trade: 'air',
          what: 'Fit a damper in every supply collar at the plenum, its handle where a hand reaches it later and its blade’s angle marked outside the insulation',
          holdPoint: 'connect',
          duration: {
            low: collars * 8 * minute,
            likely: collars * 15 * minute,
            high: collars * 30 * minute,
          },
          people: 1,
          place: 'attic',
          parts: collars,
          after: ['air/hang'],
          safeStops: ['After each damper: locked open, collar taped'],
          cautions: [...atticWork, 'Cut sheet metal is sharp: gloves.'],
        } as const,
      ]
    : []),
  {
    id: 'air/balance',
    ...cards.balance,
    trade: 'air',
    what: 'Set the dampers: first as the plan says, then by the readings at every register; lock them and write down where they stand',
    holdPoint: 'start',
    duration: { low: places * 6 * minute, likely: places * 12 * minute, high: places * 25 * minute },
    people: 2,
    place: 'attic',
    parts: 'any',
    after: ['air/seal', ...(collars > 0 ? ['air/dampers'] : [])],
    safeStops: ['Any time: all dampers locked, none shut'],
    cautions: ['Measure static pressure again at the end: dampers add to it.', ...atticWork],
  },
];
