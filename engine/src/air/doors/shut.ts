import { inOrder, type ResolvedProject } from '@kneewall/project';
import type { HouseLeaks } from '../../loads/result.ts';
import { orificesInSeries } from '../../physics/flow/index.ts';
import type { Outcome } from '../../plan/outcome.ts';
import type { Scenario } from '../../plan/scenario.ts';
import { asGiven } from '../asGiven.ts';
import type { AirFlows, AirModel } from '../ductwork.ts';
import { sideOf } from '../model.ts';
import type { HouseAir } from './houseAir.ts';
import { type Heights, placesTogether } from './leakPlaces.ts';

type House = ResolvedProject['house'];
export type Room = House['rooms'][string];

/** Rooms whose door is shut at night or when in use, where nobody said. Source: `air.closed-door` (common practice). */
const usuallyShut: readonly string[] = ['bedroom', 'bath', 'work'];

/** Whether a room has a door that gets shut. */
export function doorShuts(room: Room, s: Scenario): boolean {
  const shut = s.choice(room.door.shut);
  return shut === 'usual' ? usuallyShut.includes(s.choice(room.use)) : shut === 'shut';
}

type Opening = { readonly gap: number; readonly width: number; readonly transfer: number; readonly all: number };

/** What stays open to the hall with the door shut, m and m². Two faces with a duct between pass what both together let through. */
export function openingOf({ door }: Room, s: Scenario): Opening {
  const [gap, width, face] = [s.of(door.gap), s.of(door.width), s.of(door.transfer)];
  const transfer = s.choice(door.faces) === 'two' ? orificesInSeries(face, face) : face;
  return { gap, width, transfer, all: gap * width + transfer };
}

/** m³/s blown into a room by its registers, less what its own return grilles take. */
export const netSupply = (room: string, model: AirModel, flows: Pick<AirFlows, 'terminals'>): number =>
  model.terminals.reduce((sum, t) => {
    const q = t.room === room ? (flows.terminals[t.id] ?? 0) : 0;
    return sideOf(model, t.section) === 'supply' ? sum + q : sum - q;
  }, 0);

/**
 * The house with every door shut that gets shut, in plain numbers. Where nobody knows how it leaks, its open part is
 * taken to stand at the pressure of outdoors and rooms to have no leaks of their own.
 */
export function houseAir(house: House, leaks: Outcome<HouseLeaks>, heights: Heights, s: Scenario): HouseAir {
  const whole = leaks.ok ? s.of(asGiven('house.airtightness', 'number', leaks.value.coefficient)) : 0;
  const rooms = inOrder(house.rooms).flatMap(([id, room]) =>
    doorShuts(room, s)
      ? [
          {
            id,
            opening: openingOf(room, s).all,
            leak: leaks.ok ? whole * (leaks.value.shares[id] ?? 0) : 0,
            places: heights.places[id] ?? [],
          },
        ]
      : [],
  );
  const behind = new Set(rooms.map((r) => r.id));
  const own = Math.max(0, whole - rooms.reduce((a, r) => a + r.leak, 0));
  return {
    rooms,
    ...(leaks.ok
      ? {
          leaks: { open: own, exponent: leaks.value.exponent, places: openPlaces(leaks.value.shares, behind, heights) },
        }
      : {}),
    exhaust: exhaustOf(house, s),
    top: heights.top,
  };
}

/** Where all that is open to the hall leaks: its rooms by their shares; where none of them leaks, as the whole house does. */
function openPlaces(shares: HouseLeaks['shares'], behind: ReadonlySet<string>, { places }: Heights) {
  const all = Object.entries(places).map(([id, own]) => ({ id, places: own, weight: shares[id] ?? 0 }));
  const open = all.filter((r) => !behind.has(r.id));
  return placesTogether(open.length > 0 ? open : all);
}

/** m³/s by room; what is in no room that is there belongs to the open part. */
function exhaustOf(house: House, s: Scenario): Readonly<Record<string, number>> {
  const all: Record<string, number> = {};
  for (const [, x] of inOrder(house.exhaust)) {
    const place = x.room ?? '';
    all[place] = (all[place] ?? 0) + s.of(x.flow);
  }
  return all;
}
