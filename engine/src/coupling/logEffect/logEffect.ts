import type { Range } from '@kneewall/project';
import type { WeatherYear } from '../../climate/weather/weatherYear.ts';
import { carefully, nightLoad } from '../../loads/dynamic/designDays.ts';
import { scaledLeaks } from '../../loads/learned/scaled.ts';
import { drawing } from '../logFit/sheetOnly.ts';
import { emptyNights } from '../power/emptyNights.ts';
import { generatorYear } from '../power/generatorYear.ts';
import { type Prepared, powerRuns, prepare, preparedFor } from '../power/powerRun.ts';
import { unitYear } from '../season/unitYear.ts';
import type { EffectFigures, EffectRange, LogEffect, LogEffectInputs } from './logEffectJob.ts';

/** How many times as much is lost and drawn, and kWh a day beside the unit where that is another than entered. */
type Times = { readonly loss: number; readonly draw: number; readonly daily?: number };

/**
 * The main numbers of a plan by itself and with what a log told of it, alone and together: each at the ends and the middle
 * of what was told. `tell` hears of whole years.
 */
export function logEffect(
  inputs: LogEffectInputs,
  year: WeatherYear,
  tell: (done: number, total: number) => void,
): LogEffect {
  const { loss, draw, household } = inputs;
  const told = [loss, draw, household].filter((x) => x !== undefined).length;
  const cases = 1 + 3 * (told + (told > 1 ? 1 : 0));
  const nights = new Map<number, number>();
  const prepared = prepare(inputs, year);
  let done = 0;
  const at = (times: Times): EffectFigures => {
    const set = changed(inputs, times);
    const night = nights.get(times.loss) ?? coldNight(set);
    nights.set(times.loss, night);
    const found = { night, ...yearFigures(set, year, preparedFor(set, prepared)) };
    done++;
    tell(done, cases);
    return found;
  };
  const ends = (of: (end: keyof Range) => Times): EffectRange => ({
    low: at(of('low')),
    likely: at(of('likely')),
    high: at(of('high')),
  });
  return {
    before: at({ loss: 1, draw: 1 }),
    ...(loss ? { loss: ends((end) => ({ loss: loss[end], draw: 1 })) } : {}),
    ...(draw ? { power: ends((end) => ({ loss: 1, draw: draw[end] })) } : {}),
    ...(household ? { household: ends((end) => ({ loss: 1, draw: 1, daily: household.daily[end] })) } : {}),
    ...(told > 1 ? { all: ends((end) => all(inputs, end)) } : {}),
  };
}

const all = ({ loss, draw, household }: LogEffectInputs, end: keyof Range): Times => ({
  loss: loss?.[end] ?? 1,
  draw: draw?.[end] ?? 1,
  ...(household ? { daily: household.daily[end] } : {}),
});

/** House and unit with so many times as much lost and drawn, and the household that was logged. */
function changed(inputs: LogEffectInputs, { loss, draw, daily }: Times): LogEffectInputs {
  const { house, unit, own, household } = inputs;
  const logged = daily !== undefined && own && household ? { daily, hours: household.hours } : undefined;
  return {
    ...inputs,
    house: loss === 1 ? house : { ...house, times: loss, envelope: scaledLeaks(house.envelope, loss) },
    ...(own && logged
      ? { own: { ...own, power: { ...own.power, household: { ...own.power.household, ...logged } } } }
      : {}),
    unit: draw === 1 ? unit : { ...unit, model: drawing(unit.model, draw) },
  };
}

const coldNight = ({ house, night }: LogEffectInputs): number =>
  nightLoad(house, night, { ...house.wanted, setback: 0 }, carefully()).house;

/** Of the year: on the grid what the unit draws, on own power what that asks of it as well. */
function yearFigures(set: LogEffectInputs, year: WeatherYear, prepared: Prepared): Omit<EffectFigures, 'night'> {
  const { own } = set;
  if (!own) {
    const { heating, cooling } = unitYear(set, year, () => {});
    return { electricity: heating.compressor + heating.strips + cooling.compressor };
  }
  const { run } = powerRuns({ ...set, ...own }, year, { prepared });
  const { generator } = own.power;
  const asSet = run('with-generator', () => {});
  const alone = generator ? run('without-generator', () => {}) : asSet;
  const made = generator ? generatorYear(generator, asSet) : undefined;
  const { unit, held } = asSet.record;
  const sum = (x: ArrayLike<number>): number => Array.from(x).reduce((a, b) => a + b, 0);
  return {
    electricity: (sum(unit) * asSet.hours) / 1000,
    power: {
      litres: made?.litres ?? 0,
      generator: made?.hours ?? 0,
      held: sum(held) * asSet.hours,
      emptyNights: emptyNights(alone).nights,
    },
  };
}
