import type { WeatherYear } from '../../../climate/weather/weatherYear.ts';
import { alternatingFrom } from '../../../physics/power/inverter.ts';
import { powerRuns, prepare } from '../powerRun.ts';
import { type Bill, bill } from './bill.ts';
import type { GridYearInputs } from './gridYearJob.ts';
import { type RideThrough, rideThrough } from './rideThrough.ts';

/** A year on the grid. kWh, and money where there is a tariff. */
export type GridYear = {
  readonly unit: number;
  readonly household: number;
  /** kWh of alternating current from panels of one's own. */
  readonly sun: number;
  /** With the unit and without it: their difference is what it costs. */
  readonly bills?: { readonly all: Bill; readonly without: Bill };
  readonly outage?: RideThrough;
};

/** The unit takes what it wants; `tell` hears steps. */
export function gridYear(
  inputs: GridYearInputs,
  year: WeatherYear,
  tell: (done: number, total: number) => void,
): GridYear {
  const prepared = prepare(inputs, year);
  const { run, steps } = powerRuns(inputs, year, { prepared });
  const { record, sun, hours } = run('unlimited', (done) => tell(done, steps));
  const { arrays, inverter } = inputs.power;
  const given = arrays.length > 0 ? sun.map((w) => alternatingFrom(w - inverter.idle, inverter)) : sun;
  const unit = record.unit.map((w, i) => w + (record.standing[i] ?? 0));
  const without = record.household.map((w, i) => w - (given[i] ?? 0));
  const all = without.map((w, i) => w + (unit[i] ?? 0));
  const kilowattHours = (x: Float64Array): number => (x.reduce((a, b) => a + b, 0) * hours) / 1000;
  const { tariff } = inputs;
  return {
    unit: kilowattHours(unit),
    household: kilowattHours(record.household),
    sun: kilowattHours(given),
    ...(tariff ? { bills: { all: bill(all, tariff, hours), without: bill(without, tariff, hours) } } : {}),
    ...(inputs.outage ? { outage: rideThrough(inputs, year, prepared) } : {}),
  };
}
