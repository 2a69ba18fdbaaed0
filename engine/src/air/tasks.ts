import { atticWork } from '../plan/cautions.ts';
import type { Task } from '../plan/lines.ts';
import { damperPlaces } from './balance/places.ts';
import { cards } from './cards.ts';
import { doorTasks } from './doors/doorWork.ts';
import type { AirResult } from './result.ts';

const minute = 60;

/** Hanging, sealing and testing the ducts. Each run is its own safe stop. */
export function tasks({ model, shut, there }: AirResult): readonly Task[] {
  if (!model.ok) return [];
  const { sections } = model.value;
  // What stays hangs already, and of what stays only what is patched is sealed.
  const stays = (x: { readonly id: string }) => there.before.includes(x.id);
  const hung = sections.filter((x) => !stays(x) || there.unhung.includes(x.id)).length;
  const sealed = sections.filter((x) => !stays(x) || there.sections[x.id] === 'patched').length;
  const old = sections.filter((x) => there.replaced.includes(x.id));
  const places = damperPlaces(model.value);
  const collars = places.filter((p) => p.at === 'collar').length;
  const each = (runs: number, low: number, likely: number, high: number) => ({
    low: runs * low * minute,
    likely: runs * likely * minute,
    high: runs * high * minute,
  });
  const afterHanging = hung > 0 ? ['air/hang'] : [];
  return [
    ...(old.length > 0 ? [takeOut(old, each(old.length, 15, 30, 60))] : []),
    ...(hung > 0 ? [hang(hung, each(hung, 20, 35, 70), old.length > 0)] : []),
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
      after: afterHanging,
      safeStops: ['Any time: ports plugged'],
      cautions: ['Keep the drill away from coil, drain pan and wires; power locked off.', ...atticWork],
    },
    ...(sealed > 0 ? [seal(sealed, each(sealed, 10, 20, 40), [...afterHanging, 'air/ports'])] : []),
    ...(shut.ok ? doorTasks(shut.value.ways) : []),
    ...(places.length > 1 ? balancing({ collars, places: places.length, afterHanging, sealed: sealed > 0 }) : []),
  ];
}

/** Old ducts come out before new ones hang: each goes out whole, and the hole it leaves is capped. */
const takeOut = (old: readonly { readonly name: string }[], duration: Task['duration']): Task => ({
  id: 'air/take-out',
  ...cards['take-out'],
  trade: 'air',
  what: `Take out the old ducts that are made new: ${old.map((x) => `“${x.name}”`).join(', ')}; cap what they leave open`,
  holdPoint: 'cut',
  duration,
  people: 2,
  place: 'attic',
  parts: old.length,
  after: [],
  safeStops: ['After each run: both ends capped, hatch guarded'],
  cautions: [
    ...atticWork,
    'Old tape, wrap and board may hold asbestos: grey or white paper-like tape and board stay untouched until a laboratory has said.',
    'Cut sheet metal is sharp: gloves, long sleeves, goggles.',
  ],
});

const hang = (runs: number, duration: Task['duration'], afterOld: boolean): Task => ({
  id: 'air/hang',
  ...cards.hang,
  trade: 'air',
  what: 'Hang the ducts: pull each flexible run tight, a saddle every 4 ft, bends no tighter than one diameter',
  holdPoint: 'connect',
  duration,
  people: 2,
  place: 'attic',
  parts: runs,
  after: afterOld ? ['air/take-out'] : [],
  safeStops: ['After each run: both ends fixed and capped, hatch guarded'],
  cautions: atticWork,
});

const seal = (runs: number, duration: Task['duration'], after: readonly string[]): Task => ({
  id: 'air/seal',
  ...cards.seal,
  trade: 'air',
  what: 'Seal every collar, seam and the cabinet with mastic, and let it cure',
  holdPoint: 'close',
  duration,
  people: 2,
  place: 'attic',
  parts: runs,
  after,
  safeStops: ['After each joint: tub closed, lamp off, hatch guarded'],
  cautions: atticWork,
});

type Balancing = {
  readonly collars: number;
  readonly places: number;
  readonly afterHanging: readonly string[];
  readonly sealed: boolean;
};

/** A damper is no use where no hand gets to it; a room alone needs none. */
const balancing = ({ collars, places, afterHanging, sealed }: Balancing): Task[] => [
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
          after: afterHanging,
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
    after: [...(sealed ? ['air/seal'] : []), ...(collars > 0 ? ['air/dampers'] : [])],
    safeStops: ['Any time: all dampers locked, none shut'],
    cautions: ['Measure static pressure again at the end: dampers add to it.', ...atticWork],
  },
];
