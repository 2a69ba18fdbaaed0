/** What a step of a power system works with. W, kWh, °C, shares; temperatures in tables from -50 °C by whole degrees. */
export type PowerSystem = {
  readonly battery: {
    /** kWh at 25 °C, share of it that is never used, and share kept each way in and out. */
    readonly energy: number;
    readonly kept: number;
    readonly oneWay: number;
    /** By temperature: share of the capacity, and W taken and given at most. */
    readonly capacity: Float64Array;
    readonly charge: Float64Array;
    readonly discharge: Float64Array;
    /** J/K of the cells, W/K to what is round them, W of their heater and °C below which it is on. */
    readonly heatCapacity: number;
    readonly conductance: number;
    readonly heater: number;
    readonly heaterBelow: number;
  };
  readonly inverter: { readonly most: number; readonly nominal: number; readonly idle: number };
  /** From the generator into the battery: W of alternating current at most, and share kept. */
  readonly charger: { readonly most: number; readonly kept: number };
  readonly generator: {
    readonly rated: number;
    readonly startBelow: number;
    readonly stopAbove: number;
  };
};

/** °C at which the tables begin, and their length. */
export const tableFrom = -50;
export const tableLength = 131;

/** Where in a table a temperature falls: the whole degree at or below it. */
export const degreeOf = (t: number): number => Math.max(0, Math.min(tableLength - 1, Math.floor(t - tableFrom)));

/** A table by whole degrees. */
export const byDegree = (at: (cell: number) => number): Float64Array =>
  Float64Array.from({ length: tableLength }, (_, i) => at(tableFrom + i));

/** A battery so full (share of its energy) at °C, the generator at rest. */
export const startPower = (system: PowerSystem, share: number, temperature: number): Float64Array =>
  Float64Array.of(system.battery.energy * share, temperature, 0);
