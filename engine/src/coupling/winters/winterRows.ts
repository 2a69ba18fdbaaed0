import type { WeatherYear } from '../../climate/weather/weatherYear.ts';
import { winterMaker } from '../../climate/winters/winterYear.ts';
import { coldMornings } from '../power/coldMornings.ts';
import { darkSpells } from '../power/darkSpells.ts';
import { generatorYear } from '../power/generatorYear.ts';
import { heldBack } from '../power/powerAnswers.ts';
import { type Kept, nothingKept, powerRuns, prepare, type Span } from '../power/powerRun.ts';
import type { PowerYearInputs } from '../power/powerYearJob.ts';
import type { PowerRun } from '../power/runWay.ts';
import { runInTime } from './runInTime.ts';
import { replayedHours } from './sizesGrid.ts';
import type { WintersInputs } from './wintersJob.ts';

/** One winter in numbers, in the order of a row; the sizes follow. Hours, °C, kWh, L, days. */
export const columns = [
  'cold',
  'anyway',
  'held',
  'lowest',
  'stove',
  'generatorHours',
  'litres',
  'coldMornings',
  'aloneCold',
  'aloneLowest',
  'longestDark',
  'survivedDark',
  'heat',
  'outdoor',
  'residual',
] as const;
export type Winter = Readonly<Record<(typeof columns)[number], number>>;

/** Winters `from` up to `to`, a row each: the columns, then the hours of every size. `tell` hears winters. */
export function winterRows(
  inputs: WintersInputs,
  from: number,
  to: number,
  tell: (done: number) => void,
): readonly (readonly number[])[] {
  const maker = winterMaker(inputs.winters);
  const kept = nothingKept();
  return Array.from({ length: to - from }, (_, i) => {
    const { winter, unlimited } = winterOn(inputs, maker.year(from + i), maker, kept);
    tell(i + 1);
    return [...columns.map((name) => winter[name]), ...replayedHours(inputs.power, unlimited)];
  });
}

/** One winter in numbers, and its run with all the power the house would take. */
export function winterOn(
  inputs: Omit<PowerYearInputs, 'weather'>,
  year: WeatherYear,
  span: Span,
  kept: Kept,
): { readonly winter: Winter; readonly unlimited: PowerRun } {
  const { power } = inputs;
  const { run } = powerRuns(inputs, year, { span, prepared: prepare(inputs, year, kept) });
  const through = (way: Parameters<typeof run>[0]): PowerRun =>
    runInTime(
      run(way, () => {}),
      span,
    );
  const asSet = through('with-generator');
  const unlimited = through('unlimited');
  const alone = power.generator ? through('without-generator') : asSet;
  const heat = heldBack(asSet, unlimited);
  const without = heldBack(alone, unlimited);
  const anyway = heldBack(unlimited, unlimited).cold;
  const generator = power.generator ? generatorYear(power.generator, asSet) : undefined;
  const spells = darkSpells(alone, unlimited);
  const winter: Winter = {
    cold: forWant(asSet, unlimited),
    anyway,
    held: heat.hours,
    lowest: heat.lowest,
    stove: without.burning,
    generatorHours: generator?.hours ?? 0,
    litres: generator?.litres ?? 0,
    coldMornings: coldMornings(power.battery, asSet),
    aloneCold: forWant(alone, unlimited),
    aloneLowest: without.lowest,
    longestDark: spells.longest,
    survivedDark: spells.survived,
    heat: (sum(unlimited.record.heat) * unlimited.hours) / 1000,
    outdoor: sum(unlimited.weather.steps.outdoor) / unlimited.weather.steps.outdoor.length,
    residual: Math.max(asSet.record.residual[0] ?? 0, alone.record.residual[0] ?? 0),
  };
  return { winter, unlimited };
}

/** K too cold from which an hour counts as without heat. */
const tooCold = 3;

/** Hours without heat for want of power: too cold, while with all the power it would take the house is not. */
function forWant(run: PowerRun, unlimited: PowerRun): number {
  let steps = 0;
  for (let i = 0; i < run.record.cold.length; i++)
    if ((run.record.cold[i] ?? 0) > tooCold && (unlimited.record.cold[i] ?? 0) <= tooCold) steps++;
  return steps * run.hours;
}

const sum = (x: Float64Array): number => x.reduce((a, b) => a + b, 0);
