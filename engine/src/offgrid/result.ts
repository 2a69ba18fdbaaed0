import type { Range } from '@kneewall/project';
import type { Outcome } from '../plan/outcome.ts';
import type { ResultBase } from '../plan/resultBase.ts';

/** An array in plain numbers. */
export type ArrayInputs = {
  readonly id: string;
  /** W at 1000 W/m² and 25 °C, and the share of it a kelvin adds (negative). */
  readonly rated: number;
  readonly perKelvin: number;
  readonly tilt: number;
  readonly azimuth: number;
  readonly mounting: 'roof' | 'rack';
  /** Share lost to dirt, wires and the charge controller. */
  readonly lost: number;
  /** Share of the light that snow keeps off in freezing months. */
  readonly snow: number;
  readonly rows?: { readonly count: number; readonly pitch: number; readonly slant: number };
};

export type BatteryInputs = {
  /** kWh */
  readonly energy: number;
  readonly chemistry: 'lithium-iron-phosphate' | 'lead-acid' | 'other';
  readonly place: 'heated' | 'shed';
  readonly usable: number;
  readonly roundTrip: number;
  /** Share left at -20 °C. */
  readonly cold: number;
  readonly chargeMost?: number;
  readonly dischargeMost?: number;
  readonly heater: number;
  readonly heaterBelow: number;
  /** W/K */
  readonly boxLoss: number;
};

export type GeneratorInputs = {
  readonly rated: number;
  readonly fuel: 'diesel' | 'propane' | 'petrol';
  readonly startBelow: number;
  readonly stopAbove: number;
  readonly least: number;
};

/** A power system as its year needs it: plain numbers, so that equal systems make equal jobs. */
export type PowerInputs = {
  readonly arrays: readonly ArrayInputs[];
  readonly battery: BatteryInputs;
  readonly inverter: { readonly most: number; readonly nominal: number; readonly idle: number };
  readonly charger: { readonly most: number; readonly kept: number };
  readonly generator?: GeneratorInputs;
  /** W that a stove gives while it burns, and K too cold at which it is lit. */
  readonly stove?: { readonly heat: number; readonly lightBelow: number };
  /** kWh a day, the share that must not stop, and what is given up first. */
  readonly household: {
    readonly daily: number;
    readonly essential: number;
    readonly shedFirst: 'household' | 'heat';
    /** Its 24 hours from midnight against each other, where somebody says; else a usual day. */
    readonly hours?: readonly number[];
  };
};

/** What more of it costs, in the project's money: a kW of panels, a kWh of battery, a kW of generator, a litre of fuel. */
export type PowerCosts = {
  readonly panels: Range;
  readonly battery: Range;
  readonly generator: Range;
  readonly fuel: Range;
};

/** Hours with a price of their own: from and up to hours of the day, months 1 to 12, both ends in. */
export type PriceBand = {
  readonly id: string;
  readonly from: number;
  readonly to: number;
  readonly fromMonth: number;
  readonly toMonth: number;
  readonly price: number;
};

/** What the grid charges: money for each kWh, for each kW of a month's highest quarter of an hour, and paid back for a kWh. */
export type Tariff = {
  readonly price: number;
  readonly bands: readonly PriceBand[];
  readonly demand: number;
  readonly feedIn: number;
};

/** A house on the grid: its tariff where one is entered, its own panels, and the battery it may have for outages. */
export type GridInputs = {
  readonly power: PowerInputs;
  readonly tariff?: Tariff;
  /** Whether battery and inverter are there to carry an outage. */
  readonly outage: boolean;
};

export type OffgridResult = ResultBase & {
  /** Whether the project runs on its own power; else nothing here is asked. */
  readonly own: boolean;
  readonly inputs: Outcome<PowerInputs>;
  readonly costs: Outcome<PowerCosts>;
  /** On the grid, where a price or a battery is entered. */
  readonly grid?: Outcome<GridInputs>;
  /** Cycles and years that the battery is said to stand. */
  readonly life: Outcome<{ readonly cycles: Range; readonly years: Range }>;
};
