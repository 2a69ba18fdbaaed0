import { hourMeans, type LogTable } from '@kneewall/project';
import { changeInTime, fitTwoCapacities, houseLoss, type Interval } from '../../physics/fitting/index.ts';
import { learnUnit } from './learnUnit.ts';
import { type LogDays, logDays } from './logDays.ts';
import { type HeatGiven, type HouseLog, houseLog } from './logHours.ts';
import type { LogAnswers } from './result.ts';
import { widened } from './widened.ts';

/** Every log draws its days with this: equal logs give equal answers. */
const seed = 20_261_128;
/** Half-widths that a fit of a real house is owed beside chance. Source: `commissioning.log-model`. */
const modelMiss = { wind: 0.1, without: 0.15 };
/** K by which the indoor temperature has to move for its hours to say how the house forgets. */
const movesLeast = 0.5;
/** Hours after a gap that settle the mass. */
const settling = 72;

type Tell = (done: number, total: number) => void;

/** All that a log teaches. `tell` hears steps. Pure. */
export function learnFromLog(table: LogTable, given: HeatGiven, tell: Tell): LogAnswers {
  const hours = hourMeans(table);
  tell(1, 4);
  const log = houseLog(hours, given);
  const facts = {
    rows: table.rows,
    step: table.step,
    from: Math.floor((table.time[0] ?? 0) / 86_400),
    to: Math.floor((table.time.at(-1) ?? 0) / 86_400),
    faults: table.faults,
    asks: table.asks,
    sun: hours.columns.sun ? ('measured' as const) : hours.columns.sunPower ? ('panels' as const) : ('none' as const),
    wind: hours.columns.wind !== undefined,
  };
  if (!log) return { ...facts, days: 0, house: { weak: 'no-columns' } };
  const days = logDays(log);
  const loss = houseLoss(days, seed);
  tell(2, 4);
  const known = { ...facts, heatFrom: log.heatFrom, days: days.day.length };
  if ('weak' in loss) return { ...known, house: loss };
  const lossPerDegree = widened(loss.lossPerDegree, days.wind ? modelMiss.wind : modelMiss.without);
  const warmth = warmthOf(log, loss.lossPerDegree.likely);
  tell(3, 4);
  const power = log.heatFrom === 'sheet' ? undefined : learnUnit(log, days, given.expected);
  const change = changeOf(days, loss.weather, log.heatFrom !== 'sheet');
  tell(4, 4);
  return {
    ...known,
    house: {
      lossPerDegree,
      ...beside(log, lossPerDegree, given),
      ...(loss.aperture ? { aperture: loss.aperture } : {}),
      base: loss.base,
      points: Array.from(
        days.day,
        (d, i) => [d, days.apart[i] ?? 0, days.heat[i] ?? 0, loss.fit.residuals[i] ?? 0] as const,
      ),
    },
    ...(warmth ? { warmth } : {}),
    ...(power ? { power } : {}),
    ...(change ? { change } : {}),
  };
}

/** The plan's own loss by the same fit to the same days, W/K, and how many times it the log's is. */
function beside(log: HouseLog, loss: Interval, { planned }: HeatGiven) {
  if (!planned) return {};
  const own = houseLoss(logDays(planned(log)), seed);
  if ('weak' in own) return {};
  const perDegree = own.lossPerDegree.likely;
  const times = { likely: loss.likely / perDegree, low: loss.low / perDegree, high: loss.high / perDegree };
  return { planned: perDegree, times, ...(own.aperture ? { plannedAperture: own.aperture.likely } : {}) };
}

/** How the house forgets, where it was let cool: in a house kept at one temperature nothing of that shows. */
function warmthOf(log: HouseLog, loss: number): LogAnswers['warmth'] {
  const n = log.heat.length;
  const inputs = [
    log.outdoor,
    log.indoor,
    log.ends,
    log.heat,
    ...(log.sun ? [log.sun] : []),
    ...(log.wind ? [log.wind] : []),
  ];
  const whole = Uint8Array.from({ length: n }, (_, h) =>
    inputs.every((x) => !Number.isNaN(x[h] ?? Number.NaN)) ? 1 : 0,
  );
  const fresh = Uint8Array.from(whole, (w, h) => (w === 0 || h === 0 || whole[h - 1] === 0 ? 1 : 0));
  const counts = new Uint8Array(n);
  let since = 0;
  for (let h = 0; h < n; h++) {
    since = fresh[h] === 1 ? 0 : since + 1;
    counts[h] = since > settling && (log.heat[h] ?? 0) > 0 ? 1 : 0;
  }
  const counted = counts.reduce((a, b) => a + b, 0);
  const shown = log.indoor.filter((_, h) => counts[h] === 1).sort();
  const moved = (shown[Math.floor(0.95 * shown.length)] ?? 0) - (shown[Math.floor(0.05 * shown.length)] ?? 0);
  if (counted < 14 * 24 || moved < movesLeast) return undefined;
  const filled = (x: Float64Array): Float64Array => x.map((v) => (Number.isNaN(v) ? 0 : v));
  const fit = fitTwoCapacities(
    {
      outdoor: filled(log.outdoor),
      indoor: filled(log.indoor),
      ends: filled(log.ends),
      heat: filled(log.heat),
      ...(log.sun ? { sun: filled(log.sun) } : {}),
      ...(log.wind ? { wind: filled(log.wind) } : {}),
      day: log.heat.map((_, h) => (log.first + h) / 24),
      fresh,
      counts,
    },
    loss,
    seed,
  );
  if (!fit.settled || fit.unlearned.includes('air-capacity')) return undefined;
  return { slowHours: fit.slowHours, fastHours: fit.fastHours, lossPerDegree: fit.lossPerDegree };
}

/** Power by heat, warmer and colder, where heat is measured: then only the unit can change. Else power, or heat, by the weather. */
function changeOf(days: LogDays, weather: readonly Float64Array[], measured: boolean): LogAnswers['change'] {
  const { power, heat, outdoor, day } = days;
  const ones = heat.map(() => 1);
  // A unit near its most draws more for each W, and from a bend on strips help: without square and cube that hides what changed,
  // or passes for a change where cold days end.
  const byHeat = [
    heat,
    heat.map((q) => q ** 2),
    heat.map((q) => q ** 3),
    heat.map((q, i) => q * (outdoor[i] ?? 0)),
    ones,
  ];
  const found = changeInTime(power && measured ? byHeat : weather, power ?? heat, seed);
  if (!found) return undefined;
  const { from, earliest, latest, share, low, high, chance, least } = found;
  const [dayFrom, dayTo] = [day[earliest] ?? 0, day[latest] ?? 0];
  const by = power && measured ? 'heat' : 'weather';
  return { day: day[from] ?? 0, dayFrom, dayTo, share, low, high, chance, least, of: power ? 'power' : 'heat', by };
}
