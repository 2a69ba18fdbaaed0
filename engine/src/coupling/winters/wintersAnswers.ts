import { winterOf } from '../../climate/winters/winterOf.ts';
import { multiples } from './sizesGrid.ts';
import { columns, type Winter } from './winterRows.ts';
import type { WintersInputs } from './wintersJob.ts';

/** The winter in the middle, and what two of twenty winters reach or pass. */
export type Tenth = { readonly median: number; readonly oneInTen: number };

/** Hours over sizes of panels, W, and battery, kWh, by battery and then by panels; replayed. */
export type WinterSizes = {
  readonly panels: readonly number[];
  readonly battery: readonly number[];
  readonly own: { readonly panels: number; readonly battery: number };
  readonly of: 'generator' | 'short';
  readonly median: readonly (readonly number[])[];
  readonly oneInTen: readonly (readonly number[])[];
};

/** What many winters come to: each by itself, so that every promise reads "in N of 20". */
export type Winters = {
  /** Months of a winter, 0 to 11, in the order of time. */
  readonly months: readonly number[];
  readonly winters: readonly Winter[];
  readonly generator: boolean;
  readonly tenths: Readonly<Record<keyof Winter, Tenth>>;
  readonly sizes: WinterSizes;
};

/** Columns of which less is worse. */
const worseBelow: ReadonlySet<keyof Winter> = new Set(['lowest', 'aloneLowest', 'survivedDark', 'outdoor']);

/** Of values in rising order of harm: the middle, and what one in ten reach or pass. */
export function tenthOf(values: readonly number[], below = false): Tenth {
  const sorted = [...values].sort((a, b) => (below ? b - a : a - b));
  const n = sorted.length;
  const median = ((sorted[(n - 1) >> 1] ?? Number.NaN) + (sorted[n >> 1] ?? Number.NaN)) / 2;
  return { median, oneInTen: sorted[n - Math.max(1, Math.round(n / 10))] ?? Number.NaN };
}

/** Reads the answers off the rows of all winters. */
export function wintersAnswers(inputs: WintersInputs, rows: readonly (readonly number[])[]): Winters {
  const winters = rows.map(
    (row) => Object.fromEntries(columns.map((name, i) => [name, row[i] ?? Number.NaN])) as Winter,
  );
  const tenths = Object.fromEntries(
    columns.map((name) => [
      name,
      tenthOf(
        winters.map((w) => w[name]),
        worseBelow.has(name),
      ),
    ]),
  ) as Winters['tenths'];
  return {
    months: winterOf(inputs.winters.months),
    winters,
    generator: inputs.power.generator !== undefined,
    tenths,
    sizes: sizesOf(inputs, rows),
  };
}

function sizesOf({ power }: WintersInputs, rows: readonly (readonly number[])[]): WinterSizes {
  const own = { panels: power.arrays.reduce((sum, a) => sum + a.rated, 0), battery: power.battery.energy };
  const tenths = multiples.map((_, b) =>
    multiples.map((_x, a) => tenthOf(rows.map((row) => row[columns.length + b * multiples.length + a] ?? Number.NaN))),
  );
  return {
    panels: multiples.map((m) => m * own.panels),
    battery: multiples.map((m) => m * own.battery),
    own,
    of: power.generator ? 'generator' : 'short',
    median: tenths.map((row) => row.map((t) => t.median)),
    oneInTen: tenths.map((row) => row.map((t) => t.oneInTen)),
  };
}
