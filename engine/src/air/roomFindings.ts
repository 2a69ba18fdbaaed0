import type { Draft } from '../plan/judge.ts';
import { attempt, required } from '../plan/outcome.ts';
import type { PlanView } from '../plan/trade.ts';
import { recordWorking } from '../plan/working.ts';
import type { Found } from './found.ts';
import type { AirResult, RoomAir } from './result.ts';

/** W of heating load below which a room may do without a register of its own. Common practice, no source. */
const smallRoom = 400;

/** Whether each room gets its share of the air, or any at all. */
export function roomFindings(result: AirResult, view: PlanView): Found[] {
  return Object.values(result.rooms).flatMap((room) => {
    const name = view.project.house.rooms[room.room]?.name ?? room.room;
    const load = view.trades.loads?.rooms[room.room]?.heating;
    const none = room.reaches.ok && room.reaches.value.likely === 0;
    if (!none) return [share(room, name)];
    return load?.ok ? [withoutRegister(room, name, load.value.likely)] : [];
  });
}

function share(room: RoomAir, name: string): Found {
  const { recorder, steps } = recordWorking();
  const value = attempt(() => {
    const reaches = required(room.reaches);
    const wanted = required(room.wanted);
    recorder.step('Q_reaches', 'solved', { residual: 0 }, reaches.likely, 'm³/s', 'air.flows');
    recorder.step('Q_wanted', 'table', {}, wanted, 'm³/s', 'air.room-share');
    recorder.step(
      'share',
      'Q_reaches / Q_wanted',
      { Q_reaches: reaches.likely, Q_wanted: wanted },
      reaches.likely / wanted,
      '',
      'air.room-share',
    );
    return { low: reaches.low / wanted, likely: reaches.likely / wanted, high: reaches.high / wanted };
  });
  const numbers =
    room.reaches.ok && room.wanted.ok ? { reaches: room.reaches.value.likely, wanted: room.wanted.value } : {};
  return {
    draft: {
      ...draftOf('room-share', room),
      kind: 'fraction',
      value,
      limit: { min: 0.8 },
      source: 'air.room-share',
      facts: { name, governs: room.governs, ...numbers },
    },
    working: steps,
  };
}

function withoutRegister(room: RoomAir, name: string, load: number): Found {
  const { recorder, steps } = recordWorking();
  recorder.step('Q', 'table', {}, load, 'W', 'air.room-share');
  return {
    draft: {
      ...draftOf('bare-room', room),
      kind: 'power',
      value: { ok: true, value: load },
      limit: { max: smallRoom },
      source: 'air.room-share',
      facts: { name },
    },
    working: steps,
  };
}

const draftOf = (
  word: string,
  room: RoomAir,
): Pick<Draft, 'id' | 'subject' | 'holdPoint' | 'consequence' | 'working'> => ({
  id: `${word}:${room.room}`,
  subject: room.room,
  holdPoint: 'order',
  consequence: 'comfort',
  working: `air/${word}:${room.room}`,
});
