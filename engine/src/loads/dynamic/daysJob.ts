import { type Job, makeJob } from '../../jobs/job.ts';
import { type DayPart, dayParts } from './dayParts.ts';
import { carefully, type DayLoad, dayLoad, type NightLoad, nightLoad } from './designDays.ts';
import type { DayWeather } from './designWeather.ts';
import type { HouseInputs } from './houseInputs.ts';

export type DaysInputs = { readonly house: HouseInputs; readonly night: DayWeather; readonly day: DayWeather };

/** The cold night and the hot day as the house's own walls meet them. */
export type DesignDays = {
  readonly night: NightLoad;
  /** With the night lowered, by as much as is wanted or, where nothing is, by 3 K. */
  readonly recovery: { readonly setback: number; readonly night: NightLoad };
  readonly day: DayLoad;
  readonly parts: readonly DayPart[];
};

export const daysJobKind = 'loads/days';
export const daysJobVersion = 3;

export const daysJob = (inputs: DaysInputs): Job => makeJob(daysJobKind, daysJobVersion, inputs, 'short');

/** K by which a night is lowered to see what the morning costs, where nothing is lowered. */
const usualSetback = 3;

/** `tell` hears of four pieces. */
export function runDays(inputs: DaysInputs, tell: (done: number, total: number) => void): DesignDays {
  const { house, night, day } = inputs;
  const setback = house.wanted.setback > 0 ? house.wanted.setback : usualSetback;
  const run = carefully();
  const flat = nightLoad(house, night, { ...house.wanted, setback: 0 }, run);
  tell(1, 4);
  const recovery = { setback, night: nightLoad(house, night, { ...house.wanted, setback }, run) };
  tell(2, 4);
  const hot = dayLoad(house, day, run);
  tell(3, 4);
  const parts = dayParts(house, day);
  tell(4, 4);
  return { night: flat, recovery, day: hot, parts };
}
