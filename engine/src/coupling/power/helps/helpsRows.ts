import type { WeatherYear } from '../../../climate/weather/weatherYear.ts';
import { powerSlots, startPower } from '../../../physics/power/index.ts';
import { emptyRecord } from '../emptyRecord.ts';
import type { PowerRecord } from '../powerLoop.kernel.ts';
import { type Prepared, powerRuns, prepare, preparedFor, settling } from '../powerRun.ts';
import type { PowerYearInputs } from '../powerYearJob.ts';
import type { PowerRun } from '../runWay.ts';
import { sunAtBus } from '../sunAtBus.ts';
import { systemOf } from '../systemOf.ts';
import { agedChanges } from './ageing.ts';
import type { Change } from './change.ts';
import { demandOf, type Figures, figuresOf, toRow, withReplayed } from './figures.ts';
import type { PowerHelpsInputs } from './helpsJob.ts';
import { houseChanges } from './houseChanges.ts';
import { powerChanges } from './powerChanges.ts';
import { type Replayed, replay } from './replay.kernel.ts';
import { slowOn, worstDays } from './stoveDays.ts';

/** Every change tried, those that need the house again spread among those that do not, so that equal pieces take equal time. */
export function changesOf(inputs: PowerHelpsInputs): Change[] {
  const quick = [...powerChanges(inputs), ...agedChanges(inputs)];
  const slow = houseChanges(inputs);
  const at = (i: number, of: readonly Change[]): number => (i + 0.5) / of.length;
  return [
    ...slow.map((change, i) => ({ change, at: at(i, slow) })),
    ...quick.map((change, i) => ({ change, at: at(i, quick) })),
  ]
    .sort((a, b) => a.at - b.at)
    .map(({ change }) => change);
}

/** Rows of figures: what the change makes of the year, what it is measured against, and for a unit the year without its generator. */
export function helpsRows(
  inputs: PowerHelpsInputs,
  year: WeatherYear,
  from: number,
  to: number,
  tell: (done: number) => void,
): number[][] {
  const prepared = prepare(inputs, year);
  const base = baseRun(inputs, year, prepared);
  const figures = figuresOf(inputs, base.run);
  return changesOf(inputs)
    .slice(from, to)
    .map((change, i) => {
      tell(i);
      const replayed = change.powerOnly ? inReplay(change.inputs, base, inputs) : undefined;
      if (replayed) return [...toRow(replayed), ...toRow(figures)];
      const shared =
        change.kind === 'unit' ? preparedFor(change.inputs, prepared) : forStove(change, base.run, prepared);
      const { run } = powerRuns(change.inputs, year, { prepared: shared });
      const set = figuresOf(change.inputs, run('with-generator', still));
      const alone = change.kind === 'unit' ? toRow(figuresOf(change.inputs, run('without-generator', still))) : [];
      return [...toRow(set), ...toRow(figures), ...alone];
    });
}

const still = (): void => {};

/** A run with the days that settled it. */
export type BaseRun = { readonly run: PowerRun; readonly settled: PowerRecord };

/** The year as it is set up. */
export function baseRun(inputs: PowerYearInputs, year: WeatherYear, prepared: Prepared): BaseRun {
  const settled = emptyRecord(prepared.weather.steps.count);
  return { run: powerRuns(inputs, year, { prepared }).run('with-generator', still, { settled }), settled };
}

/** Where a stove is tended on the worst days, the unit goes slowly on them. */
const forStove = ({ kind }: Change, base: PowerRun, prepared: Prepared): Prepared =>
  kind === 'stove-days' ? { ...prepared, able: slowOn(worstDays(base), prepared.able) } : prepared;

/**
 * The figures of another power system under the demand of a run, or undefined where that demand would not stand: power
 * held the unit back in the run, or would. Panels that stay give what they gave.
 */
export function inReplay(
  inputs: PowerYearInputs,
  { run, settled }: BaseRun,
  was: PowerYearInputs = inputs,
): Figures | undefined {
  if (run.record.held.some((x) => x > 0) || settled.held.some((x) => x > 0)) return undefined;
  const { power, house } = inputs;
  const added = power.arrays.filter((a) => !was.power.arrays.includes(a));
  const more = added.length > 0 ? sunAtBus(added, run.weather, house.groundReflectance) : undefined;
  const sun = more ? run.sun.map((w, i) => w + (more[i] ?? 0)) : run.sun;
  const start = power.battery.place === 'heated' ? house.wanted.heating : (run.weather.steps.outdoor[0] ?? 0);
  const system = systemOf(power, true);
  const state = startPower(system, 0.6, start);
  const flows = new Float64Array(powerSlots.flowCount);
  const made = (): Float64Array => new Float64Array(sun.length);
  const record = { generator: made(), short: made(), out: made(), cell: made() };
  const before = Math.round((settling * 24) / run.hours);
  const stands = (r: PowerRecord, from: number, count: number, taken?: Replayed): boolean =>
    replay(system, state, flows, sun, demandOf({ ...run, record: r }, power), from, count, run.hours, taken);
  if (!stands(settled, sun.length - before, before) || !stands(run.record, 0, sun.length, record)) return undefined;
  return figuresOf(inputs, withReplayed(run, record));
}
