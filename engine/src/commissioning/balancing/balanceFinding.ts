import type { Balancing } from '../../coupling/balancing/system.ts';
import { required } from '../../plan/outcome.ts';
import { type Found, telling } from '../../plan/telling.ts';
import type { PlanView } from '../../plan/trade.ts';
import type { Visit } from '../result.ts';

/** Parts of its share within which a room is right. Source: `air.balance`. */
const band = 0.1;
const rounding = 1e-9;
/** Times the plan's resistance beyond which a run is looked at before a damper hides it. Source: `commissioning.balancing`. */
const lookAt = 2.2;

/** Rooms out of their band by the flows of a visit, and the dampers to move for them. */
export function balanceFinding(visit: Visit, { project }: PlanView): Found[] {
  const { id, name, balancing } = visit;
  if (!balancing) return [];
  const { read, found } = balancing;
  const register = (t: string) => project.routes.ducts.terminals[t]?.name ?? t;
  return [
    telling('commissioning', id)(
      {
        id: `balance:${id}`,
        holdPoint: 'start',
        consequence: 'comfort',
        kind: 'count',
        limit: { max: 0 },
        source: 'commissioning.balancing',
        facts: {
          name,
          lacking: read.lacking.map(register).join('”, “'),
          mixed: read.mixed === undefined ? 0 : 1,
          blocked: read.blocked ? register(read.blocked.register) : '',
          times: read.again?.times ?? 0,
          now: read.again?.now ?? 0,
          ...(found.ok ? factsOf(found.value, (room) => project.house.rooms[room]?.name ?? room, register) : {}),
        },
      },
      (rec) => {
        const { rooms } = required(found);
        const out = rooms.filter((r) => Math.abs(r.now - 1) > band + rounding).length;
        rec.step('n', 'solved', {}, out, '', 'commissioning.balancing');
        return out;
      },
    ),
  ];
}

function factsOf(found: Balancing, roomName: (room: string) => string, register: (id: string) => string) {
  return {
    word: found.word,
    all: found.rooms.length,
    rooms: found.rooms
      .filter((r) => Math.abs(r.now - 1) > band + rounding)
      .map((r) => ({ at: roomName(r.room), now: r.now, after: r.after })),
    worst: Math.max(...found.rooms.map((r) => Math.abs(r.after - 1))),
    moves: found.moves.map(({ name, at, inAttic, from, to, before, after }) => ({
      at: name,
      where: at,
      attic: inAttic ? 1 : 0,
      opens: after < before ? 1 : 0,
      ...(from === undefined || to === undefined ? {} : { from, to }),
    })),
    checks: found.checks.map((id) => ({
      at: register(id),
      after: found.registers.find((r) => r.register === id)?.after ?? 0,
    })),
    larger: Object.entries(found.larger).map(([place, times]) => ({
      at: found.runs.find((r) => r.place === place)?.name ?? place,
      times,
    })),
    look: found.runs.filter((r) => r.factor > lookAt).map((r) => ({ at: r.name, times: r.factor })),
  };
}
