import type { WeatherYear } from '../../climate/weather/weatherYear.ts';
import { dayLoad, nightLoad, quickly } from '../../loads/dynamic/designDays.ts';
import { sizeOf } from '../../loads/unitSizes.ts';
import { ductwork, roomByRoom } from '../ducted/ductworks.ts';
import type { ImprovementsInputs } from './improvementsJob.ts';
import { type Cost, costOf, type Done, done, type Measure, measures, plus } from './measures.ts';
import { houseWeather, loadedLayout, runYear, type YearWeatherSteps } from './run.ts';

/**
 * What one thing, or several together, take off what the unit has to give: W at the cold night's and the hot day's worst
 * hour, kWh a year. Where ducts are known their losses count.
 */
export type Improvement = {
  readonly measures: readonly Measure[];
  readonly heating: number;
  readonly cooling: number;
  readonly heatingEnergy: number;
  readonly coolingEnergy: number;
  /** By how many steps of about 6,000 Btu/h the unit may be smaller. */
  readonly sizesLess: number;
  readonly cost: Cost;
};

export type Improvements = {
  /** Each alone, by what it takes off the cold night for its money; then all combinations that nothing cheaper beats, by cost. */
  readonly single: readonly Improvement[];
  readonly together: readonly Improvement[];
};

type Figures = { readonly night: number; readonly day: number; readonly heat: number; readonly cold: number };

/**
 * Runs every combination of what can be done through the cold night, the hot day and the year. `tell` hears of
 * combinations. What a combination saves is its own, not the sum of its parts.
 */
export function improvements(
  inputs: ImprovementsInputs,
  year: WeatherYear,
  tell: (done: number, total: number) => void,
): Improvements {
  const weather = houseWeather(year, Math.min(quickly().step, year.stepSeconds), inputs.house.horizon);
  const possible = measures.filter((m) => costOf(m, inputs) !== undefined);
  const combinations = subsetsOf(possible);
  const base = figuresOf(inputs, inputs, weather);
  const all = combinations.map((chosen, i): Improvement => {
    tell(i, combinations.length);
    const then = chosen.reduce<Done>((x, m) => done[m](x), inputs);
    const now = figuresOf(then, inputs, weather);
    return {
      measures: chosen,
      heating: base.night - now.night,
      cooling: base.day - now.day,
      heatingEnergy: base.heat - now.heat,
      coolingEnergy: base.cold - now.cold,
      sizesLess: sizeOf(base.night) - sizeOf(now.night),
      cost: chosen.map((m) => costOf(m, inputs) ?? nothing).reduce(plus, nothing),
    };
  });
  tell(combinations.length, combinations.length);
  const perMoney = (x: Improvement): number => x.heating / Math.max(x.cost.likely, 1);
  return {
    single: all.filter((x) => x.measures.length === 1).sort((a, b) => perMoney(b) - perMoney(a)),
    together: unbeaten(all),
  };
}

const nothing: Cost = { low: 0, likely: 0, high: 0 };

/** Every choice of at least one. */
const subsetsOf = (possible: readonly Measure[]): Measure[][] =>
  Array.from({ length: 2 ** possible.length - 1 }, (_, i) => possible.filter((_m, bit) => ((i + 1) >> bit) & 1));

/** By rising cost, those that take more off the cold night than everything cheaper. */
function unbeaten(all: readonly Improvement[]): Improvement[] {
  let best = 0;
  return [...all]
    .sort((a, b) => a.cost.likely - b.cost.likely || b.heating - a.heating)
    .filter((x) => {
      if (x.heating <= best) return false;
      best = x.heating;
      return true;
    });
}

function figuresOf({ house, ducts }: Done, { night, day }: ImprovementsInputs, weather: YearWeatherSteps): Figures {
  const ductworks = ducts ? [ductwork(house, ducts, roomByRoom(house))] : [];
  const run = { ...quickly(), ductworks };
  const cold = nightLoad(house, night, { ...house.wanted, setback: 0 }, run);
  const hot = dayLoad(house, day, run);
  const { record, rowSeconds } = runYear(house, weather, loadedLayout(house, weather, ductworks));
  const energy = (x: Float64Array): number => (x.reduce((a, b) => a + b, 0) * rowSeconds) / 3.6e6;
  return {
    night: cold.house,
    day: hot.sensible[hot.worst] ?? 0,
    heat: energy(record.heating),
    cold: energy(record.cooling),
  };
}
