import { attempt, type Outcome, required } from '../plan/outcome.ts';
import type { Spread } from '../plan/scenario.ts';
import { recordWorking } from '../plan/working.ts';
import type { DesignDays } from './dynamic/daysJob.ts';
import type { LearnedHouse, LoadsResult, RoomLoad } from './result.ts';

/**
 * The loads as the cold night and the hot day through the house's own walls have them, once those are known. What the
 * steady sums say of each unknown keeps its share of the whole.
 */
export function byDays(result: LoadsResult, days: DesignDays): LoadsResult {
  const { night, day } = days;
  const sensible = day.sensible[day.worst] ?? 0;
  const heating = attempt(() => brought(required(result.heating), night.house));
  const cooling = attempt(() => {
    const sums = required(result.cooling);
    return {
      sensible: brought(sums.sensible, sensible),
      latent: brought(sums.latent, day.latent[day.worst] ?? 0),
      hour: day.worst + 0.5,
    };
  });
  const { recorder, steps } = recordWorking();
  if (heating.ok) recorder.step('Q_night', 'table', {}, heating.value.likely, 'W', 'loads.by-days');
  return {
    ...result,
    heating,
    cooling,
    ...atticByDay(result, day.attic),
    sums: attempt(() => ({
      heating: required(result.heating).likely,
      cooling: required(result.cooling).sensible.likely,
    })),
    narrowed: attempt(() => {
      const narrowed = required(result.narrowed);
      const by = required(heating).likely / required(result.heating).likely;
      return {
        ...narrowed,
        heating: scaled(narrowed.heating, by),
        fuel: { ...narrowed.fuel, heating: scaled(narrowed.fuel.heating, by) },
      };
    }),
    rooms: Object.fromEntries(
      Object.entries(result.rooms).map(([id, room]) => [id, roomByDays(room, night.rooms[id], day.rooms[id]?.atWorst)]),
    ),
    ...(result.learned ? { learned: learnedByDays(result.learned, result.heating, heating) } : {}),
    workings: { ...result.workings, 'loads/heating': [...(result.workings['loads/heating'] ?? []), ...steps] },
  };
}

/** The attic as its own hot day has it; the roof's outside stays that of the sums, which hang on sun and air alone. */
function atticByDay(result: LoadsResult, air: readonly number[] | undefined): Partial<LoadsResult> {
  if (air === undefined) return {};
  return {
    atticDay: attempt(() => shifted(required(result.atticDay), Math.max(...air))),
    atticHours: attempt(() => required(result.atticHours).map((hour, h) => ({ ...hour, air: air[h] ?? hour.air }))),
  };
}

/** What the plan says without the log, brought to the days in the same proportion as what it says with it. */
function learnedByDays(learned: LearnedHouse, sums: Outcome<Spread>, days: Outcome<Spread>): LearnedHouse {
  const heating = attempt(() => scaled(required(learned.own.heating), required(days).likely / required(sums).likely));
  return { ...learned, own: { ...learned.own, heating } };
}

/** A room that the days do not know keeps its sums. */
function roomByDays(room: RoomLoad, heating: number | undefined, cooling: number | undefined): RoomLoad {
  const over = (sums: Outcome<Spread>, watts: number | undefined): Outcome<Spread> =>
    watts === undefined ? sums : attempt(() => brought(required(sums), watts));
  return { ...room, heating: over(room.heating, heating), cooling: over(room.cooling, cooling) };
}

/** A spread moved to another likely value, every part of it in proportion; without a likely value of its own, by what is added. */
function brought(x: Spread, likely: number): Spread {
  return x.likely > 0 ? { ...scaled(x, likely / x.likely), likely } : shifted(x, likely);
}

/** A spread moved as a whole. */
function shifted(x: Spread, likely: number): Spread {
  const more = likely - x.likely;
  return { ...x, low: x.low + more, likely, high: x.high + more };
}

const scaled = (x: Spread, by: number): Spread => ({
  low: x.low * by,
  likely: x.likely * by,
  high: x.high * by,
  drivers: x.drivers.map((d) => ({ ...d, atLow: d.atLow * by, atHigh: d.atHigh * by })),
});
