import type { WeatherYear } from '../../../climate/weather/weatherYear.ts';
import { powerSlots, startPower } from '../../../physics/power/index.ts';
import { type PowerRun, type Prepared, powerRuns, prepare } from '../powerRun.ts';
import type { PowerYearInputs } from '../powerYearJob.ts';
import { sunAtBus } from '../sunAtBus.ts';
import { systemOf } from '../systemOf.ts';
import { agedChanges } from './ageing.ts';
import type { Change } from './change.ts';
import { demandOf, type Figures, figuresOf, toRow, withReplayed } from './figures.ts';
import type { PowerHelpsInputs } from './helpsJob.ts';
import { houseChanges } from './houseChanges.ts';
import { powerChanges } from './powerChanges.ts';
import { type Demand, type Replayed, replay } from './replay.kernel.ts';
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
  const { run } = powerRuns(inputs, year, prepared);
  const base = run('with-generator', () => {});
  const figures = figuresOf(inputs, base);
  const own = inReplay(inputs, base);
  return changesOf(inputs)
    .slice(from, to)
    .map((change, i) => {
      tell(i);
      const replayed = own && change.powerOnly ? inReplay(change.inputs, base, inputs) : undefined;
      if (own && replayed) return [...toRow(replayed), ...toRow(own)];
      const shared = change.kind === 'unit' ? prepare(change.inputs, year) : forStove(change, base, prepared);
      const { run: once } = powerRuns(change.inputs, year, shared);
      const set = figuresOf(
        change.inputs,
        once('with-generator', () => {}),
      );
      const alone =
        change.kind === 'unit'
          ? toRow(
              figuresOf(
                change.inputs,
                once('without-generator', () => {}),
              ),
            )
          : [];
      return [...toRow(set), ...toRow(figures), ...alone];
    });
}

/** Where a stove is tended on the worst days, the unit goes slowly on them. */
const forStove = ({ kind }: Change, base: PowerRun, prepared: Prepared): Prepared =>
  kind === 'stove-days' ? { ...prepared, able: slowOn(worstDays(base), prepared.able) } : prepared;

const settling = 30;

/**
 * The figures of another power system under the demand of a run, or undefined where that demand would not stand: power
 * held the unit back in the run, or would. Panels that stay give what they gave.
 */
export function inReplay(inputs: PowerYearInputs, base: PowerRun, was: PowerYearInputs = inputs): Figures | undefined {
  if (base.record.held.some((x) => x > 0)) return undefined;
  const { power, house } = inputs;
  const added = power.arrays.filter((a) => !was.power.arrays.includes(a));
  const more = added.length > 0 ? sunAtBus(added, base.weather, house.groundReflectance) : undefined;
  const sun = more ? base.sun.map((w, i) => w + (more[i] ?? 0)) : base.sun;
  const replayed = wholeYear(power, demandOf(base, power), sun, base.hours);
  return replayed && figuresOf(inputs, withReplayed(base, replayed));
}

/** The year after thirty days that settle the battery; undefined where the unit would be held back in it. */
function wholeYear(
  power: PowerYearInputs['power'],
  demand: Demand,
  sun: Float64Array,
  hours: number,
): Replayed | undefined {
  const system = systemOf(power, true);
  const made = (): Float64Array => new Float64Array(sun.length);
  const record = { generator: made(), short: made(), out: made(), cell: made() };
  const state = startPower(system, 0.6, demand.ambient[0] ?? 0);
  const flows = new Float64Array(powerSlots.flowCount);
  const before = Math.round((settling * 24) / hours);
  replay(system, state, flows, sun, demand, sun.length - before, before, hours);
  return replay(system, state, flows, sun, demand, 0, sun.length, hours, record) ? record : undefined;
}
