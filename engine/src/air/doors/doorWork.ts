import type { ResolvedProject } from '@kneewall/project';
import type { MaterialLine, Task } from '../../plan/lines.ts';
import { scenario } from '../../plan/scenario.ts';
import { cards } from '../cards.ts';
import type { ShutDoors } from './houseAir.ts';
import { openingOf } from './shut.ts';

/** A gap that can still be called a gap under a door, m (1 1/2 in), and the open share of a usual grille's face. */
export const gapMost = 0.0381;
export const openShare = 0.7;

/** The way out that a room lacks with its door shut: a wider gap where the door alone can do it, else a grille; m, m² of face. */
export type DoorWay = { readonly room: string; readonly name: string } & (
  | { readonly by: 'gap'; readonly gap: number }
  | { readonly by: 'grille'; readonly face: number }
);

/** What to cut or buy for every shut room that stands above the pressure allowed. */
export function doorWays(house: ResolvedProject['house'], { rooms }: ShutDoors): readonly DoorWay[] {
  return Object.entries(rooms).flatMap(([id, { enough }]): DoorWay[] => {
    const room = house.rooms[id];
    if (!room || enough === undefined) return [];
    const { gap, width, transfer, all } = openingOf(room, scenario());
    const wanted = width > 0 ? (enough - transfer) / width : Number.POSITIVE_INFINITY;
    const name = room.name ?? id;
    if (wanted <= gap || enough <= all) return [];
    if (wanted <= gapMost) return [{ room: id, name, by: 'gap', gap: wanted }];
    return [{ room: id, name, by: 'grille', face: (enough - all) / openShare }];
  });
}

/** Grilles to buy, in m² of face. */
export const grilleLines = (ways: readonly DoorWay[]): MaterialLine[] =>
  ways.flatMap((way) =>
    way.by === 'grille'
      ? [
          {
            id: `air/transfer:${way.room}`,
            trade: 'air',
            what: `Transfer grille between “${way.name}” and the hall, its face; each of two, by 1.4, where a duct lies between`,
            kind: 'area',
            amount: way.face,
            for: `house.rooms.${way.room}`,
          } as const,
        ]
      : [],
  );

const minute = 60;

/** Doors to cut shorter and grilles to let in, before the blower is started with doors shut. */
export function doorTasks(ways: readonly DoorWay[]): Task[] {
  if (ways.length === 0) return [];
  const named = (by: DoorWay['by']): string =>
    ways
      .filter((w) => w.by === by)
      .map((w) => `“${w.name}”`)
      .join(', ');
  const [cut, let_in] = [named('gap'), named('grille')];
  const n = ways.length;
  return [
    {
      id: 'air/door-ways',
      ...cards['door-ways'],
      trade: 'air',
      what: `Let the air out of shut rooms: ${[cut && `cut the door of ${cut} to the gap that the plan names`, let_in && `let a transfer grille in for ${let_in}`].filter(Boolean).join('; ')}`,
      holdPoint: 'close',
      duration: { low: n * 25 * minute, likely: n * 50 * minute, high: n * 120 * minute },
      people: 1,
      place: 'inside',
      parts: n,
      after: [],
      safeStops: ['After each door or grille: door hung, hole covered'],
      cautions: [
        'Never cut a door or wall that holds back fire, such as the one to a garage: ask the building office.',
        'Old paint may hold lead: no dry sanding or sawing before it is tested. Look for wires and pipes before you open a wall.',
        'A room with a flue that is open to it gets its air as its maker and the code say, not by these grilles.',
      ],
    },
  ];
}
