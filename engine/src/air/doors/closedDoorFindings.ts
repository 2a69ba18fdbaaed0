import { inOrder, type Range } from '@kneewall/project';
import { attempt, required, unresolved } from '../../plan/outcome.ts';
import { scenario } from '../../plan/scenario.ts';
import type { PlanView } from '../../plan/trade.ts';
import { recordWorking } from '../../plan/working.ts';
import type { AirFlows, AirModel } from '../ductwork.ts';
import type { Found } from '../found.ts';
import type { AirResult } from '../result.ts';
import type { ShutRoomAir } from './houseAir.ts';
import { doorShuts, netSupply, openingOf, type Room } from './shut.ts';
import { doorPressureMost } from './shutDoors.ts';

/** Pa that a usual gauge can tell apart. */
const gaugeSees = 0.5;
/** m³/s below which a room is as good as not fed: a hundredth of a litre a second. */
const hardlyAny = 1e-5;

/** Each room whose door is shut at times: the pressure that builds up behind it, and what would let the air out. */
export function closedDoorFindings(result: AirResult, model: AirModel, flows: AirFlows, view: PlanView): Found[] {
  return inOrder(view.project.house.rooms).flatMap(([id, room]) => {
    if (!doorShuts(room, scenario()) || Math.abs(netSupply(id, model, flows)) < hardlyAny) return [];
    return [closedDoor(id, room, result)];
  });
}

function closedDoor(id: string, room: Room, result: AirResult): Found {
  const { recorder, steps } = recordWorking();
  const solved = attempt((): ShutRoomAir => {
    const { blower } = required(result.shut);
    return blower.rooms[id] ?? unresolved('missing', room.door.gap.path);
  });
  const value = attempt((): Range => {
    const own = required(solved);
    const { gap, width, transfer, all } = openingOf(room, scenario());
    const { residual } = required(result.shut).blower;
    const source = 'air.closed-door';
    recorder.step('Q', 'solved', { residual }, own.net, 'm³/s', 'air.flows');
    recorder.step('A', 'h * w + A_transfer', { h: gap, w: width, A_transfer: transfer }, all, 'm²', source);
    const size = Math.abs(own.pressure);
    recorder.step('dp', 'solved', { Q: own.net, A: all, c: own.leak, residual }, size, 'Pa', source);
    return sizes(required(result.doorPressures[id] ?? solvedNowhere), size);
  });
  return {
    draft: {
      id: `closed-door:${id}`,
      subject: id,
      holdPoint: 'cut',
      consequence: 'comfort',
      kind: 'room-pressure',
      value,
      limit: { max: doorPressureMost },
      source: 'air.closed-door',
      working: `air/closed-door:${id}`,
      facts: { name: room.name ?? id, ...(solved.ok ? wayOut(solved.value, room) : {}), ...inWind(id, result) },
    },
    working: steps,
  };
}

const solvedNowhere = { ok: false, because: 'not-converged', paths: ['routes.ducts'] } as const;

/** How large a pressure is, whichever way it points. */
function sizes({ low, high }: Range, likely: number): Range {
  const ends = [Math.abs(low), Math.abs(high)];
  return { low: low < 0 && high > 0 ? 0 : Math.min(...ends), likely, high: Math.max(...ends) };
}

/** Pa in the wind, where that is more than on a calm day. */
function inWind(id: string, { shut }: AirResult): { readonly windy?: number } {
  if (!shut.ok) return {};
  const { windy = 0 } = shut.value.doors[id] ?? {};
  const calm = shut.value.blower.rooms[id]?.pressure ?? 0;
  return Math.abs(windy) > Math.abs(calm) + gaugeSees ? { windy } : {};
}

/** For the words: what the room loses, the gap that would do, and the grille. */
function wayOut(own: ShutRoomAir, room: Room): Readonly<Record<string, number | string>> {
  const { gap, width, transfer, all } = openingOf(room, scenario());
  const { enough = all } = own;
  return {
    flow: Math.abs(own.net),
    lost: own.lost,
    way: own.pressure > 0 ? 'out' : 'in',
    gap: width > 0 ? (enough - transfer) / width : gap,
    extra: Math.max(0, enough - all),
  };
}
