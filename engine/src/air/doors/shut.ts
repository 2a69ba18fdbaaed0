import type { ResolvedProject } from '@kneewall/project';
import type { HouseLeaks } from '../../loads/result.ts';
import { orificesInSeries } from '../../physics/flow/index.ts';
import { usualExponent } from '../../physics/infiltration/index.ts';
import type { Outcome } from '../../plan/outcome.ts';
import type { Scenario } from '../../plan/scenario.ts';
import { sideOf } from '../model.ts';
import type { AirFlows, AirModel } from '../result.ts';

export type Room = ResolvedProject['house']['rooms'][string];

/** Rooms whose door is shut at night or when in use, where nobody said. Source: `air.closed-door` (common practice). */
const usuallyShut: readonly string[] = ['bedroom', 'bath', 'work'];

/** Whether a room has a door that gets shut. */
export function doorShuts(room: Room, s: Scenario): boolean {
  const shut = s.choice(room.door.shut);
  return shut === 'usual' ? usuallyShut.includes(s.choice(room.use)) : shut === 'shut';
}

export type Opening = { readonly gap: number; readonly width: number; readonly transfer: number; readonly all: number };

/** What stays open to the hall with the door shut, m and m². Two faces with a duct between pass what both together let through. */
export function openingOf({ door }: Room, s: Scenario): Opening {
  const [gap, width, face] = [s.of(door.gap), s.of(door.width), s.of(door.transfer)];
  const transfer = s.choice(door.faces) === 'two' ? orificesInSeries(face, face) : face;
  return { gap, width, transfer, all: gap * width + transfer };
}

/** m³/s blown into a room by its registers, less what its own return grilles take. */
export const netSupply = (room: string, model: AirModel, flows: AirFlows): number =>
  model.terminals.reduce((sum, t) => {
    const q = t.room === room ? (flows.terminals[t.id] ?? 0) : 0;
    return sideOf(model, t.section) === 'supply' ? sum + q : sum - q;
  }, 0);

/** A room's own leaks to the outside; none are counted where its walls are not entered. */
export function leakOf(room: string, leaks: Outcome<HouseLeaks> | undefined, coefficient: number) {
  if (!leaks?.ok) return { coefficient: 0, exponent: usualExponent };
  return { coefficient: coefficient * (leaks.value.shares[room] ?? 0), exponent: leaks.value.exponent };
}
