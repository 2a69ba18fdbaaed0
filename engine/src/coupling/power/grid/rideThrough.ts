import type { WeatherYear } from '../../../climate/weather/weatherYear.ts';
import type { OutageCourse } from '../outages.ts';
import { type Prepared, powerRuns } from '../powerRun.ts';
import type { GridYearInputs } from './gridYearJob.ts';

/** An outage of the grid on the day of the year on which it is hardest, from a full battery, without sun, household on what must not stop. */
export type RideThrough = {
  /** Day of the year from 0, hour of the day at which it is hardest, and the day's mean outdoor air, °C. */
  readonly day: number;
  readonly hour: number;
  readonly outdoor: number;
  /** Hours until power first holds the heat back, and until the room falls below 15 °C: three days where it does not. */
  readonly heat: number;
  readonly warm: number;
  /** °C of the room with the thermostat one day and three days on. */
  readonly afterDay: number;
  readonly afterThree: number;
  /** Of outages that begin at that hour, one on each day of the year: how many keep their heat for so many hours. */
  readonly through: readonly { readonly hours: number; readonly starts: number }[];
  readonly starts: number;
};

type Course = Omit<RideThrough, 'through' | 'starts'>;

/** Hours of the day at which an outage is tried, and how long it is followed. */
const every = 3;
const days = 3;
/** °C below which a room is no longer lived in. */
const chilly = 15;

/** Hours that are counted through the year; the last is how long each of those outages is followed. */
const counted = [4, 8, 24] as const;

/** The hardest of the outages that begin through the coldest day, and of those at its hour on all other days. */
export function rideThrough(inputs: GridYearInputs, year: WeatherYear, prepared: Prepared): RideThrough {
  const { weather } = prepared;
  const { count, outdoor, stepSeconds } = weather.steps;
  const perDay = Math.round(86_400 / stepSeconds);
  const means = Array.from({ length: count / perDay }, (_, d) =>
    outdoor.subarray(d * perDay, (d + 1) * perDay).reduce((a, b) => a + b / perDay, 0),
  );
  const day = means.reduce((best, mean, d) => (mean < (means[best] ?? 0) ? d : best), 0);
  const { household } = inputs.power;
  const power = {
    ...inputs.power,
    arrays: [],
    household: { ...household, daily: household.daily * household.essential, essential: 1 },
  };
  const { outage, dailyOutages } = powerRuns({ ...inputs, power }, year, { prepared });
  const course = (on: number, hour: number): Course =>
    courseOf(on, hour, means[on] ?? 0, outage(on * perDay + (hour * perDay) / 24, days * perDay));
  const onColdest = hardest(Array.from({ length: 24 / every }, (_, i) => course(day, i * every)));
  const all = dailyOutages(onColdest.hour, perDay);
  const least = all.indexOf(Math.min(...all));
  const worst = (all[least] ?? 0) < onColdest.heat ? hardest([onColdest, course(least, onColdest.hour)]) : onColdest;
  const through = counted.map((hours) => ({ hours, starts: all.filter((h) => h >= hours).length }));
  return { ...worst, through, starts: all.length };
}

const hardest = (tried: readonly Course[]): Course =>
  tried.reduce((worst, x) => (x.heat < worst.heat || (x.heat === worst.heat && x.warm < worst.warm) ? x : worst));

function courseOf(day: number, hour: number, outdoor: number, { held, room, hours }: OutageCourse): Course {
  const first = (is: (i: number) => boolean): number => {
    for (let i = 0; i < held.length; i++) if (is(i)) return i * hours;
    return held.length * hours;
  };
  const at = (h: number): number => room[Math.min(room.length, Math.round(h / hours)) - 1] ?? 0;
  return {
    day,
    hour,
    outdoor,
    heat: first((i) => (held[i] ?? 0) > 0),
    warm: first((i) => (room[i] ?? 0) < chilly),
    afterDay: at(24),
    afterThree: at(24 * days),
  };
}
