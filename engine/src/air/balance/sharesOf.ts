import type { LoadsResult } from '../../loads/result.ts';
import { attempt, type Outcome, required, unresolved } from '../../plan/outcome.ts';
import type { Season } from './result.ts';

export type Shares = Readonly<Record<string, number>>;

/**
 * What part of the air each room with a register is to get: its part of their loads, W. Rooms without a register live on
 * the others' air. Ends as missing where a room's load is, or where no room has any.
 */
export function sharesOf(loads: LoadsResult, rooms: readonly string[], season: Season): Outcome<Shares> {
  return attempt(() => {
    const each = rooms.map((room): readonly [string, number] => {
      const load = loads.rooms[room] ?? unresolved('missing', `house.rooms.${room}`);
      return [room, Math.max(0, required(load[season]).likely)];
    });
    const all = each.reduce((a, [, load]) => a + load, 0);
    if (!(all > 0)) return unresolved('missing', 'house.rooms');
    return Object.fromEntries(each.map(([room, load]) => [room, load / all]));
  });
}

/** The season in which the house as a whole asks for more; the other where its load is not known. */
export function governingSeason({ heating, cooling }: LoadsResult): Season {
  if (!heating.ok || !cooling.ok) return cooling.ok ? 'cooling' : 'heating';
  return cooling.value.sensible.likely > heating.value.likely ? 'cooling' : 'heating';
}
