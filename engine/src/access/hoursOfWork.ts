import { inOrder, type ResolvedProject } from '@kneewall/project';
import type { ClimateResult } from '../climate/result.ts';
import type { HouseYear } from '../coupling/houseYear/answers.ts';
import type { LoadsResult } from '../loads/result.ts';
import { attempt, required, unresolved } from '../plan/outcome.ts';
import type { Scenario } from '../plan/scenario.ts';
import { workerOf } from './atticHeat.ts';
import { drinkAnHour, drinkMost, type Worker, workBetween, workHours } from './kernels/hours.ts';
import type { HeatHours, MonthHours, PlannedHours } from './result.ts';

type Upstream = { readonly climate: ClimateResult; readonly loads: LoadsResult };
type Window = ResolvedProject['work']['windows'][string];

/** K of the roof deck above the attic for each K of the attic above outdoors, at the hot hour. Source: `access.attic-heat`. */
function roofAbove({ climate, loads }: Upstream): number {
  const outdoor = required(climate.day).outdoor.likely;
  const attic = required(loads.atticDay).likely;
  const roof = outdoor + required(loads.atticSunRise);
  return attic > outdoor ? Math.max(0, roof - attic) / (attic - outdoor) : 0;
}

/** Minutes of each hour of a day of each month, nine of ten being no hotter, and those of the days that are planned. */
export function heatHours(
  { routes, work }: Pick<ResolvedProject, 'routes' | 'work'>,
  upstream: Upstream,
  s: Scenario,
): HeatHours {
  const year = required(upstream.loads.year);
  if (!year.atticWork) return unresolved('missing', 'house.attic');
  const above = roofAbove(upstream);
  const pressure = required(upstream.climate.pressure);
  const worker = workerOf(routes.access.heat, s);
  const months = year.atticWork.temperature.map((_, m) => monthOf(year, m, above, worker, pressure));
  return {
    months,
    planned: inOrder(work.windows).map(([id, w]) => ({ id, of: attempt(() => plannedOf(w, id, months, s)) })),
  };
}

function monthOf(year: HouseYear, m: number, above: number, worker: Worker, pressure: number): MonthHours {
  const attic = year.atticWork?.temperature[m] ?? [];
  const hours = attic.map((air, h) => {
    const over = (year.attic?.[m]?.[h] ?? air) - (year.outdoor[m]?.[h] ?? air);
    return { air, humidity: year.atticWork?.humidity[m]?.[h] ?? 0, roof: air + above * Math.max(0, over) };
  });
  const worked = workHours(hours, worker, pressure);
  return { attic, index: worked.map((h) => h.index), minutes: worked.map((h) => h.minutes) };
}

function plannedOf(window: Window, id: string, months: readonly MonthHours[], s: Scenario): PlannedHours {
  const month = Number(window.day?.slice(5, 7) ?? Number.NaN);
  const hours = months[month - 1];
  if (!window.day || !hours) return unresolved('missing', `work.windows.${id}.day`);
  const from = s.of(window.from);
  const until = Math.min(86_400, from + s.of(window.duration));
  if (!(until > from)) return unresolved('out-of-range', window.duration.path);
  const within = hours.minutes.filter((_, h) => 3600 * (h + 1) > from && 3600 * h < until);
  const work = workBetween(hours.minutes, from, until);
  const hot = within.filter((minutes) => minutes < 60).length;
  return {
    day: window.day,
    month: month - 1,
    from,
    until,
    work,
    leastMinutes: Math.min(...within),
    drink: hot === 0 || work === 0 ? 0 : Math.min(drinkMost, drinkAnHour) * ((until - from) / 3600),
    ...bestStart(hours.minutes, until - from),
  };
}

/** The start, on a quarter of an hour, that leaves most work in as long a day; the earliest of equals from 4:00 on. */
function bestStart(minutes: readonly number[], duration: number): { readonly best: number; readonly bestWork: number } {
  let [best, bestWork] = [0, -1];
  for (let from = 4 * 3600; from + duration <= 86_400; from += 900) {
    const work = workBetween(minutes, from, from + duration);
    if (work > bestWork + 1) [best, bestWork] = [from, work];
  }
  return { best, bestWork: Math.max(0, bestWork) };
}
