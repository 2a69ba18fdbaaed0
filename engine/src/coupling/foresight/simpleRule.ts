import type { PowerRun } from '../power/runWay.ts';
import type { SetPointRule } from '../power/setPointRule.kernel.ts';
import { comfortBand } from './comfort.ts';

/** The rule's own numbers, rough on purpose: nobody tunes them at home. Source: `offgrid.simple-rule` (common practice). */
export const ruleNumbers = { ahead: 1, fullFrom: 0.95, fullUntil: 0.85, restAt: 0.4, day: 300 } as const;

/** Share of a day's use that the sun to come has to give for it to be enough. */
const enoughOf = 0.5;

/** What is known of tomorrow's sun: all of it, as from a good forecast, or that it is like today's. */
export type Forecast = 'good' | 'like-today';

/** The rule for a year of sun, W by step, and of what the house draws with all the power it would take. */
export function simpleRule({ sun, record, hours }: PowerRun, forecast: Forecast): SetPointRule {
  const perDay = Math.round(24 / hours);
  const drawn = record.household.map((x, i) => x + (record.unit[i] ?? 0) + (record.standing[i] ?? 0));
  const before = overDay(drawn, -perDay, perDay);
  const coming = overDay(sun, forecast === 'good' ? 0 : -perDay, perDay);
  return {
    ...ruleNumbers,
    setback: comfortBand.cooler,
    sun,
    enough: Uint8Array.from(coming, (w, i) => (w >= enoughOf * (before[i] ?? 0) ? 1 : 0)),
    warming: new Uint8Array(1),
  };
}

/** The sum over a day that begins so many steps from each step, round the year's end. */
function overDay(x: Float64Array, from: number, perDay: number): Float64Array {
  const n = x.length;
  const at = (i: number): number => x[((i % n) + n) % n] ?? 0;
  const out = new Float64Array(n);
  for (let k = from; k < from + perDay; k++) out[0] = (out[0] ?? 0) + at(k);
  for (let i = 1; i < n; i++) out[i] = (out[i - 1] ?? 0) - at(i - 1 + from) + at(i - 1 + from + perDay);
  return out;
}
