import { attempt, type Outcome, required, unresolved } from '../../plan/outcome.ts';
import { recordWorking } from '../../plan/working.ts';
import type { Found } from '../found.ts';
import type { AirResult } from '../result.ts';
import type { DamperSetting, RoomBalance, SeasonBalance } from './result.ts';

/** What a room should get at least of its share. Source: `air.balance`. */
const leastPart = 0.9;

/** The room that comes off worst as the ducts are drawn, and the dampers that would give every room its share. */
export function balanceFinding(
  { balance }: AirResult,
  nameOf: (room: string) => string,
  staticMost: number | undefined,
): Found {
  const { recorder, steps } = recordWorking();
  const season = attempt(() => required(required(balance)[required(balance).governs]));
  const worst = season.ok ? worstOf(season.value.rooms) : undefined;
  const value: Outcome<number> = attempt(() => {
    required(season);
    const part = worst?.drawn ?? unresolved('missing', 'routes.ducts.terminals');
    recorder.step('share', 'table', {}, worst?.share ?? 0, '', 'air.room-share');
    recorder.step('part', 'solved', { residual: season.ok ? season.value.miss : 0 }, part, '', 'air.balance');
    return part;
  });
  return {
    draft: {
      id: 'balance',
      subject: worst?.room ?? 'rooms',
      holdPoint: 'start',
      consequence: 'comfort',
      kind: 'fraction',
      value,
      limit: { min: leastPart },
      source: 'air.balance',
      working: 'air/balance',
      facts: season.ok && worst ? { ...factsOf(season.value, worst, nameOf), ...over(season.value, staticMost) } : {},
    },
    working: steps,
  };
}

/** What the unit allows, where balancing asks for more. */
const over = ({ staticPressure }: SeasonBalance, most: number | undefined): Record<string, number> =>
  most !== undefined && staticPressure > most ? { most } : {};

/** Who gets least of its share as drawn; of those alike the first by name. */
const worstOf = (rooms: readonly RoomBalance[]): RoomBalance | undefined =>
  [...rooms]
    .filter((r) => r.drawn !== undefined)
    .sort((a, b) => (a.drawn ?? 0) - (b.drawn ?? 0) || (a.room < b.room ? -1 : 1))[0];

/** Words need every damper by name and setting: `name 1`, `set 1`, `angle 1`. */
function factsOf(season: SeasonBalance, worst: RoomBalance, nameOf: (room: string) => string) {
  const dampers = season.settings.map(
    ({ place, set, byHand }, i): Record<string, number | string> => ({
      [`name ${i + 1}`]: place.name,
      [`set ${i + 1}`]: set,
      [`at ${i + 1}`]: place.at,
      ...(byHand === undefined ? {} : { [`angle ${i + 1}`]: byHand }),
    }),
  );
  return Object.assign(
    {
      name: nameOf(worst.room),
      season: season.season,
      balanced: shortest(season.rooms)?.balanced ?? 1,
      flow: season.flow,
      static: season.staticPressure,
      dampers: dampers.length,
      beyond: countOf(season, 'beyond'),
      limited: season.limited ? 1 : 0,
      short: nameOf(shortest(season.rooms)?.room ?? worst.room),
    },
    ...dampers,
  ) as Record<string, number | string>;
}

const countOf = ({ settings }: SeasonBalance, set: DamperSetting['set']): number =>
  settings.filter((s) => s.set === set).length;

/** Who gets least of its share when balanced. */
const shortest = (rooms: readonly RoomBalance[]): RoomBalance | undefined =>
  [...rooms]
    .filter((r) => r.balanced !== undefined)
    .sort((a, b) => (a.balanced ?? 0) - (b.balanced ?? 0) || (a.room < b.room ? -1 : 1))[0];
