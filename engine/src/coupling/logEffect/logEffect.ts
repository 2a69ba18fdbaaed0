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

/** How many times as much is lost and drawn. */
type Times = { readonly loss: number; readonly draw: number };

/**
 * The main numbers of a plan by itself and with what a log told of it, alone and together: each at the ends and the middle
 * of what was told. `tell` hears of whole years.
 */
export function logEffect(
  inputs: LogEffectInputs,
  year: WeatherYear,
  tell: (done: number, total: number) => void,
): LogEffect {
  const { loss, draw } = inputs;
  const cases = 1 + 3 * [loss, draw, loss && draw].filter((x) => x !== undefined).length;
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
    ...(loss && draw ? { both: ends((end) => ({ loss: loss[end], draw: draw[end] })) } : {}),
  };
}

/** House and unit with so many times as much lost and drawn. */
function changed(inputs: LogEffectInputs, { loss, draw }: Times): LogEffectInputs {
  const { house, unit } = inputs;
  return {
    ...inputs,
    house: loss === 1 ? house : { ...house, times: loss, envelope: scaledLeaks(house.envelope, loss) },
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
