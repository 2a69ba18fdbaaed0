import { addHouse, type DispatchHouse } from './dispatchHouse.ts';
import type { DispatchProgramme, StepRows } from './programme.ts';
import { type ProgrammeBuilder, programmeBuilder } from './programme.ts';

/**
 * Sun, battery, generator and loads over equal steps, everything known beforehand. kWh of a step unless told otherwise;
 * arrays by step. Two buses: sun, charger and battery on the one of direct current, loads and generator on the other,
 * the inverter between. What is not taken is let go, on either.
 */
export type Dispatch = {
  readonly steps: number;
  /** At the bus of direct current: what sun could give, and what is taken whatever happens. */
  readonly sun: Float64Array;
  readonly direct: Float64Array;
  /** Of alternating current, beside what the house's heat takes. */
  readonly load: Float64Array;
  readonly battery: {
    /** Most and least it holds; what it holds at first, and has to hold in the end. */
    readonly energy: number;
    readonly floor: Float64Array;
    readonly start: number;
    readonly end: number;
    /** Share of what comes in that is stored, and of what is taken out that arrives. */
    readonly keptIn: number;
    readonly keptOut: number;
    /** Most that it takes and gives at its terminals. */
    readonly charge: Float64Array;
    readonly discharge: Float64Array;
  };
  readonly generator: { readonly most: number; readonly cost: Float64Array };
  readonly charger: { readonly most: number; readonly kept: number };
  readonly inverter: {
    /** Pieces of its curve, falling: kWh in at most, and the share that comes out. */
    readonly pieces: readonly { readonly width: number; readonly kept: number }[];
    /** Drawn at its input, but where the generator carries all and cells too cold to charge give nothing. */
    readonly idle: number;
  };
  /** Cost of a kWh of load that is not served; without it all has to be. */
  readonly short?: { readonly cost: number };
  readonly house?: DispatchHouse;
};

/** The least-cost programme of a dispatch. Pure; solving it is another's work. */
export function dispatchProgramme(d: Dispatch): DispatchProgramme {
  const b = programmeBuilder();
  const rows = rowsOf(b, d);
  const none = (): Int32Array => new Int32Array(d.steps).fill(-1);
  const at = {
    carried: none(),
    charging: none(),
    short: none(),
    stored: none(),
    cold: none(),
    heat: new Int32Array(2 * d.steps),
  };
  rows.forEach((row, t) => {
    addBattery(b, d, rows, t, at.stored);
    for (const piece of d.inverter.pieces)
      b.column(0, 0, piece.width, [
        [row.bus, -1],
        [row.served, piece.kept],
      ]);
    addGenerator(b, d, row, t, at);
    addRest(b, d, row, t);
    if (d.short) at.short[t] = addShort(b, d, row, t, d.short.cost);
  });
  if (d.house) addHouse(b, d.house, rows, at);
  return { programme: b.done(), at };
}

const value = (x: Float64Array, t: number): number => x[t] ?? 0;

function rowsOf(b: ProgrammeBuilder, d: Dispatch): StepRows[] {
  return Array.from({ length: d.steps }, (_, t) => ({
    bus: b.row(value(d.direct, t) + d.inverter.idle - value(d.sun, t), Number.POSITIVE_INFINITY),
    served: b.row(value(d.load, t), Number.POSITIVE_INFINITY),
    stored: b.row(t === 0 ? d.battery.start : 0, t === 0 ? d.battery.start : 0),
    rest: mayRest(d, t) ? b.row(Number.NEGATIVE_INFINITY, 0) : -1,
  }));
}

/** What goes in, comes out and is held: e(t) = e(t-1) + kept in x charged - discharged / kept out. */
function addBattery(
  b: ProgrammeBuilder,
  { battery, steps }: Dispatch,
  rows: readonly StepRows[],
  t: number,
  stored: Int32Array,
): void {
  const row = rows[t];
  if (!row) return;
  b.column(0, 0, value(battery.charge, t), [
    [row.bus, -1],
    [row.stored, -battery.keptIn],
  ]);
  b.column(0, 0, value(battery.discharge, t), [
    [row.bus, 1],
    [row.stored, 1 / battery.keptOut],
  ]);
  const next = rows[t + 1];
  const least = t === steps - 1 ? Math.max(battery.end, value(battery.floor, t)) : value(battery.floor, t);
  stored[t] = b.column(0, Math.min(least, battery.energy), battery.energy, [
    [row.stored, 1],
    ...(next ? ([[next.stored, -1]] as const) : []),
  ]);
}

function addGenerator(
  b: ProgrammeBuilder,
  { generator, charger }: Dispatch,
  row: StepRows,
  t: number,
  at: DispatchProgramme['at'],
): void {
  if (generator.most <= 0) return;
  const cost = value(generator.cost, t);
  const together = charger.most > 0 ? b.row(Number.NEGATIVE_INFINITY, generator.most) : -1;
  at.carried[t] = b.column(cost, 0, generator.most, [
    [row.served, 1],
    ...(row.rest >= 0 ? ([[row.rest, -1]] as const) : []),
    ...(together >= 0 ? ([[together, 1]] as const) : []),
  ]);
  if (together >= 0)
    at.charging[t] = b.column(cost, 0, Math.min(charger.most, generator.most), [
      [row.bus, charger.kept],
      [together, 1],
    ]);
}

/** Whether an inverter can be at rest in a step: only where no charger could feed it through the battery's bus. */
const mayRest = ({ battery, inverter, generator }: Dispatch, t: number): boolean =>
  generator.most > 0 && inverter.idle > 0 && value(battery.charge, t) < inverter.idle;

/** The share of a step for which the inverter rests: at most the share of the load that the generator carries. */
function addRest(b: ProgrammeBuilder, { load, inverter }: Dispatch, row: StepRows, t: number): void {
  if (row.rest < 0) return;
  b.column(0, 0, 1, [
    [row.bus, inverter.idle],
    [row.rest, value(load, t)],
  ]);
}

/** Load that goes without; where all of it does, the inverter rests. */
function addShort(b: ProgrammeBuilder, { load, inverter }: Dispatch, row: StepRows, t: number, cost: number): number {
  const most = value(load, t);
  return b.column(cost, 0, most, [
    [row.served, 1],
    [row.bus, most > 0 ? inverter.idle / most : 0],
  ]);
}
