import { bladeAngle, bladeLosses } from '../../physics/flow/index.ts';
import type { AirFlows } from '../ductwork.ts';
import { partsOf, roomFlow } from './parts.ts';
import type { DamperPlace } from './places.ts';
import type { DamperSetting, RoomBalance, Season, SeasonBalance } from './result.ts';
import type { Shares } from './sharesOf.ts';
import type { Within } from './withinTable.ts';

/** Degrees: nobody sets a blade finer. */
const handStep = 5;

type States = { readonly drawn: AirFlows; readonly open: AirFlows; readonly asSet?: AirFlows };

/** What every room gets in each state, and how every damper stands, for one season. */
export function seasonBalance(
  season: Season,
  found: Within,
  shares: Shares,
  places: readonly DamperPlace[],
  states: States,
): SeasonBalance {
  const parts = Object.entries({ ...states, balanced: found.flows }).map(
    ([state, flows]): readonly [string, Shares] => [state, partsOf(places, shares, flows)],
  );
  const rooms = [...new Set(places.map((p) => p.room))];
  return {
    season,
    rooms: rooms.map(
      (room): RoomBalance => ({
        room,
        share: shares[room] ?? 0,
        ...Object.fromEntries(parts.flatMap(([state, of]) => (of[room] === undefined ? [] : [[state, of[room]]]))),
        flow: roomFlow(places, room, found.flows),
      }),
    ),
    settings: places.map((p) => settingOf(p, shares[p.room] ?? 0, found)),
    flow: found.flows.flow,
    staticPressure: found.flows.staticPressure,
    limited: found.limited,
    rounds: found.rounds,
    miss: found.miss,
  };
}

function settingOf(place: DamperPlace, share: number, found: Within): DamperSetting {
  const loss = found.losses[place.room] ?? bladeLosses.open;
  const looked = bladeAngle(loss);
  const byHand = looked.ok ? Math.round(looked.value / handStep) * handStep : undefined;
  const round = place.diameter !== undefined && looked.ok && byHand !== undefined;
  const turned = byHand === 0 ? 'open' : 'turned';
  return {
    place,
    set: !found.beyond.includes(place.room) ? turned : share > 0 ? 'beyond' : 'shut',
    loss,
    ...(round ? { angle: looked.value, byHand } : {}),
  };
}
