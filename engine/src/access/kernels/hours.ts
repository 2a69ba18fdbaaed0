import { wetBulb } from '../../physics/air/index.ts';
import { type Effort, minutesAnHour, wbgtInside } from './heat.ts';

/** An hour in an attic: air °C, kg of water to a kg of dry air, and the °C of the roof deck above it. */
export type AtticHour = { readonly air: number; readonly humidity: number; readonly roof: number };

/** Who works there: effort, two weeks of daily heat behind them, and K that their clothes add to the index. */
export type Worker = { readonly effort: Effort; readonly used: boolean; readonly clothes: number };

/** The index of that hour, °C, its globe and natural wet bulb, and minutes of it that may be worked. */
export type WorkHour = {
  readonly index: number;
  readonly globe: number;
  readonly wet: number;
  readonly minutes: number;
};

/** K that the bulb stands above that of air led past it, in an attic's radiation. Source: `access.attic-heat`. */
const radiated = 1;

/**
 * Minutes of an hour that may be worked in an attic; the rest of it is spent where it is cool. The globe stands between air
 * and roof deck; Pa. Air that is not finite leaves no minute. Source: `access.screening`.
 */
export function workHour(hour: AtticHour, worker: Worker, pressure: number): WorkHour {
  const globe = (hour.air + hour.roof) / 2;
  const wet = wetBulb(hour.air, hour.humidity, pressure) + radiated;
  const index = wbgtInside(wet, globe) + worker.clothes;
  return { index, globe, wet, minutes: minutesAnHour(index, worker.effort, worker.used) };
}

/** The same for every hour of a day or a year: what a plan of work needs to know of an attic. */
export const workHours = (hours: readonly AtticHour[], worker: Worker, pressure: number): WorkHour[] =>
  hours.map((hour) => workHour(hour, worker, pressure));

/** s of work between two times of day, s after midnight, where each hour of the day allows so many minutes. */
export function workBetween(minutes: readonly number[], from: number, until: number): number {
  let sum = 0;
  for (let hour = 0; hour < 24; hour++) {
    const share = Math.max(0, Math.min(until, 3600 * (hour + 1)) - Math.max(from, 3600 * hour)) / 3600;
    sum += share * (minutes[hour] ?? 0) * 60;
  }
  return sum;
}

/** L to drink in an hour of heat: a cup each quarter of an hour, and the most that a stomach takes. Source: `access.water`. */
export const drinkAnHour = 0.95;
export const drinkMost = 1.4;
