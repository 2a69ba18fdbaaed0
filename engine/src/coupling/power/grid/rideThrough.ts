import type { WeatherYear } from '../../../climate/weather/weatherYear.ts';
import { type OutageCourse, type Prepared, powerRuns } from '../powerRun.ts';
import type { GridYearInputs } from './gridYearJob.ts';

/** An outage of the grid on the year's coldest day, from a full battery, without sun, household on what must not stop. */
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
};

/** Hours of the day at which an outage is tried, and how long it is followed. */
const every = 3;
const days = 3;
/** °C below which a room is no longer lived in. */
const chilly = 15;

/** The hardest of the outages that begin through the coldest day. */
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
  const { outage } = powerRuns({ ...inputs, power }, year, { prepared });
  const tried = Array.from({ length: 24 / every }, (_, i) =>
    courseOf(day, i * every, means[day] ?? 0, outage(day * perDay + (i * every * perDay) / 24, days * perDay)),
  );
  return tried.reduce((worst, x) =>
    x.heat < worst.heat || (x.heat === worst.heat && x.warm < worst.warm) ? x : worst,
  );
}

function courseOf(day: number, hour: number, outdoor: number, { held, room, hours }: OutageCourse): RideThrough {
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
