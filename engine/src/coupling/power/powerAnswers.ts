import { daysInMonth, monthOfDay } from '../../physics/calendar.ts';
import type { DayCurves } from '../houseYear/answers.ts';
import { coldMornings } from './coldMornings.ts';
import { type DarkDays, darkDays } from './darkDays.ts';
import { type DarkSpells, darkSpells } from './darkSpells.ts';
import { type DarkWeek, darkWeek } from './darkWeek.ts';
import { type EmptyNights, emptyNights } from './emptyNights.ts';
import { type GeneratorYear, generatorYear } from './generatorYear.ts';
import { type PowerSizes, powerSizes } from './powerSizes.ts';
import type { PowerYearInputs } from './powerYearJob.ts';
import type { PowerRun } from './runWay.ts';

/** What power keeps from the house. */
export type HeldBack = {
  /** Hours in which it holds the unit back. */
  readonly hours: number;
  /** Hours in which the room with the thermostat is more than 3 K too cold. */
  readonly cold: number;
  /** kWh of heat that the unit does not give, and kWh that a stove gives, and hours for which it burns. */
  readonly missing: number;
  readonly stove: number;
  readonly burning: number;
  /** °C of that room at its coldest. */
  readonly lowest: number;
};

/** K too cold from which an hour counts as without heat. */
const without = 3;

/** kWh of a month. `sun` is what the arrays could give, `used` what was taken of it. */
export type PowerMonth = {
  readonly household: number;
  readonly unit: number;
  readonly standing: number;
  readonly sun: number;
  readonly used: number;
  readonly generator: number;
};

/** What a year on one's own power comes to; the unit held back by battery and inverter in the same step. */
export type PowerYear = {
  readonly months: readonly PowerMonth[];
  /** As it is set up. */
  readonly heat: HeldBack;
  /** Where there is a generator: as if it did not start. */
  readonly withoutGenerator?: HeldBack;
  readonly generator?: GeneratorYear;
  /** Mornings on which cells are too cold to charge; and kWh of sun that this turns away in the year. */
  readonly coldMornings: number;
  readonly refused: number;
  readonly emptyNights: EmptyNights;
  /** What never rests, in the five months with most heat: its share of all electricity, and kWh a day. */
  readonly standing: { readonly share: number; readonly daily: number };
  /** kWh that the household went without. */
  readonly householdShort: number;
  /** Full cycles of the battery. */
  readonly cycles: number;
  readonly darkDays: readonly DarkDays[];
  readonly darkSpells: DarkSpells;
  readonly darkWeek: DarkWeek;
  readonly charge: DayCurves;
  readonly cell: DayCurves;
  readonly sizes: PowerSizes;
  /** The largest miss of a step's energy balance, as a share of what flowed. */
  readonly residual: number;
};

export type PowerYearRuns = {
  readonly asSet: PowerRun;
  readonly alone: PowerRun;
  readonly unlimited: PowerRun;
};

/** Reads the answers off the runs: as it is set up, without its generator, and with all the power the house would take. */
export function powerAnswers(inputs: PowerYearInputs, { asSet, alone, unlimited }: PowerYearRuns): PowerYear {
  const { power } = inputs;
  const { record, hours } = asSet;
  const kilowattHours = (x: Float64Array): number => (x.reduce((a, b) => a + b, 0) * hours) / 1000;
  return {
    months: monthsOf(asSet),
    heat: heldBack(asSet, unlimited),
    ...(power.generator
      ? { withoutGenerator: heldBack(alone, unlimited), generator: generatorYear(power.generator, asSet) }
      : {}),
    coldMornings: coldMornings(power.battery, asSet),
    refused: kilowattHours(record.refused),
    emptyNights: emptyNights(alone),
    standing: standingOfWinter(inputs, asSet, unlimited),
    householdShort: kilowattHours(record.short),
    cycles: kilowattHours(record.out) / power.battery.energy,
    darkDays: darkDays(inputs, unlimited),
    darkSpells: darkSpells(alone, unlimited),
    darkWeek: darkWeek(asSet, unlimited),
    charge: dayCurves(asSet, record.charge),
    cell: dayCurves(asSet, record.cell),
    sizes: powerSizes(inputs, unlimited),
    residual: Math.max(record.residual[0] ?? 0, alone.record.residual[0] ?? 0),
  };
}

const monthOf = (step: number, { hours }: PowerRun): number => monthOfDay(Math.floor((step * hours) / 24));

/** kWh by month. */
function byMonth(x: Float64Array, run: PowerRun): number[] {
  const months = daysInMonth.map(() => 0);
  for (let i = 0; i < x.length; i++) {
    const m = monthOf(i, run);
    months[m] = (months[m] ?? 0) + ((x[i] ?? 0) * run.hours) / 1000;
  }
  return months;
}

function monthsOf(run: PowerRun): PowerMonth[] {
  const { record } = run;
  const columns = [record.household, record.unit, record.standing, run.sun, record.used, record.generator];
  const sums = columns.map((x) => byMonth(x, run));
  const at = (column: number, m: number): number => sums[column]?.[m] ?? 0;
  return daysInMonth.map((_, m) => ({
    household: at(0, m),
    unit: at(1, m),
    standing: at(2, m),
    sun: at(3, m),
    used: at(4, m),
    generator: at(5, m),
  }));
}

export function heldBack(run: PowerRun, unlimited: PowerRun): HeldBack {
  const sum = (x: Float64Array): number => x.reduce((a, b) => a + b, 0);
  const missing = ((sum(unlimited.record.heat) - sum(run.record.heat)) * run.hours) / 1000;
  return {
    hours: run.record.held.reduce((a, b) => a + b, 0) * run.hours,
    cold: run.record.cold.filter((k) => k > without).length * run.hours,
    missing: Math.max(0, missing),
    stove: (sum(run.record.stove) * run.hours) / 1000,
    burning: run.record.stove.filter((w) => w > 0).length * run.hours,
    lowest: run.record.room.reduce((a, b) => Math.min(a, b), Number.MAX_VALUE),
  };
}

function standingOfWinter(inputs: PowerYearInputs, run: PowerRun, unlimited: PowerRun): PowerYear['standing'] {
  const heat = byMonth(unlimited.record.heat, unlimited);
  const winter = [...daysInMonth.keys()].sort((a, b) => (heat[b] ?? 0) - (heat[a] ?? 0) || a - b).slice(0, 5);
  const of = (months: readonly number[]): number => winter.reduce((a, m) => a + (months[m] ?? 0), 0);
  const days = winter.reduce((a, m) => a + (daysInMonth[m] ?? 0), 0);
  const idle = (inputs.power.inverter.idle * 24 * days) / 1000;
  const never = of(byMonth(run.record.standing, run)) + of(byMonth(run.record.heater, run)) + idle;
  const all = never + of(byMonth(run.record.household, run)) + of(byMonth(run.record.unit, run));
  return { share: all > 0 ? never / all : 0, daily: never / days };
}

/** Mean days of each month, hour by hour. */
function dayCurves(run: PowerRun, x: Float64Array): DayCurves {
  const sums = daysInMonth.map(() => new Float64Array(24));
  for (let i = 0; i < x.length; i++) {
    const month = sums[monthOf(i, run)];
    const hour = Math.floor(i * run.hours) % 24;
    if (month) month[hour] = (month[hour] ?? 0) + (x[i] ?? 0) * run.hours;
  }
  return sums.map((day, m) => [...day].map((sum) => sum / (daysInMonth[m] ?? 30)));
}
