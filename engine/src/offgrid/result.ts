import type { Range } from '@kneewall/project';
import type { Outcome } from '../plan/outcome.ts';
import type { ResultBase } from '../plan/trade.ts';

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
  };
};

export type OffgridResult = ResultBase & {
  /** Whether the project runs on its own power; else nothing here is asked. */
  readonly own: boolean;
  readonly inputs: Outcome<PowerInputs>;
  /** Cycles and years that the battery is said to stand. */
  readonly life: Outcome<{ readonly cycles: Range; readonly years: Range }>;
};
