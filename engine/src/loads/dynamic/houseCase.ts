import type { ResolvedProject } from '@kneewall/project';
import type { ClimateResult, YearWeather } from '../../climate/result.ts';
import { required } from '../../plan/outcome.ts';
import { scenario } from '../../plan/scenario.ts';
import { type DayWeather, dayWeather, nightWeather } from './designWeather.ts';
import { waveOf } from './ground.ts';
import { type HouseInputs, houseInputs } from './houseInputs.ts';

/** A house as likely as it is known, its design days, and the year of weather it stands in. */
export type HouseCase = {
  readonly house: HouseInputs;
  readonly night: DayWeather;
  readonly day: DayWeather;
  readonly weather: YearWeather;
};

/** Reads a house and its weather. Ends the enclosing attempt where something is missing. */
export function houseCase({ house, site }: Pick<ResolvedProject, 'house' | 'site'>, climate: ClimateResult): HouseCase {
  const s = scenario();
  const months = required(climate.months);
  const pressure = required(climate.pressure);
  const place = { latitude: required(climate.latitude), pressure };
  return {
    house: houseInputs(house, site, pressure, waveOf(months.map((m) => m.mean)), s),
    night: nightWeather(required(climate.night), months, place, s),
    day: dayWeather(required(climate.day), place, s),
    weather: required(climate.year),
  };
}
