import { coldMornings } from '../coldMornings.ts';
import { generatorYear } from '../generatorYear.ts';
import type { PowerYearInputs } from '../powerYearJob.ts';
import type { PowerRun } from '../runWay.ts';
import type { Demand, Replayed } from './replay.kernel.ts';

/** What a year comes to, in figures that any change may move. */
export type Figures = {
  /** Hours of the generator, litres and starts; 0 where there is none. */
  readonly generator: number;
  readonly litres: number;
  readonly starts: number;
  /** Hours in which power holds the heat back, and in which the room with the thermostat is more than 3 K too cold. */
  readonly held: number;
  readonly cold: number;
  readonly coldMornings: number;
  /** kWh that the household goes without; kWh that a stove gives; full cycles of the battery. */
  readonly householdShort: number;
  readonly stove: number;
  readonly cycles: number;
};

const names = [
  'generator',
  'litres',
  'starts',
  'held',
  'cold',
  'coldMornings',
  'householdShort',
  'stove',
  'cycles',
] as const satisfies readonly (keyof Figures)[];

export const figureCount = names.length;
export const toRow = (f: Figures): number[] => names.map((name) => f[name]);
export const fromRow = (row: readonly number[]): Figures =>
  Object.fromEntries(names.map((name, i) => [name, row[i] ?? 0])) as Figures;

const without = 3;

/** Reads a run of the whole loop. */
export function figuresOf({ power }: Pick<PowerYearInputs, 'power'>, run: PowerRun): Figures {
  const { record, hours } = run;
  const sum = (x: Float64Array): number => x.reduce((a, b) => a + b, 0);
  const generator = power.generator ? generatorYear(power.generator, run) : undefined;
  return {
    generator: generator?.hours ?? 0,
    litres: generator?.litres ?? 0,
    starts: generator?.starts ?? 0,
    held: record.held.reduce((a, b) => a + b, 0) * hours,
    cold: record.cold.filter((k) => k > without).length * hours,
    coldMornings: coldMornings(power.battery, run),
    householdShort: (sum(record.short) * hours) / 1000,
    stove: (sum(record.stove) * hours) / 1000,
    cycles: (sum(record.out) * hours) / 1000 / power.battery.energy,
  };
}

/** A run with what a replay found in the place of its power; its house, which did not change, stays. */
export const withReplayed = (run: PowerRun, replayed: Replayed): PowerRun => ({
  ...run,
  record: { ...run.record, ...replayed },
});

/** The demand of a run, its battery standing in a heated room or in the open. */
export const demandOf = ({ record, weather }: PowerRun, { battery, household }: PowerYearInputs['power']): Demand => ({
  household: record.household,
  unit: record.unit,
  standing: record.standing,
  ambient: battery.place === 'heated' ? record.room : weather.steps.outdoor,
  before: household.shedFirst === 'heat' ? 1 : household.essential,
});
