import type { Faults } from '@kneewall/project';
import type { Interval, Weak } from '../../physics/fitting/index.ts';
import type { Outcome } from '../../plan/outcome.ts';
import type { LogBeside } from './beside/result.ts';

/** Where the heat of a log comes from: a heat meter, air flow and its warming, or the unit's power and the plan's sheet. */
export type HeatFrom = 'meter' | 'air' | 'sheet';

/** A day as a point: days from 1970, K apart, W of heat, and W that the fit misses. */
export type LogDay = readonly [number, number, number, number];

/** What a log says about the house and the unit. Powers W, W/K; days counted from 1970. */
export type LogAnswers = {
  readonly rows: number;
  readonly step: number;
  readonly from: number;
  readonly to: number;
  readonly faults: Faults;
  /** What looks wrong in it as a whole, in words. */
  readonly asks: readonly string[];
  readonly heatFrom?: HeatFrom;
  /** Days that could be used. */
  readonly days: number;
  /** Which measurements the log has beside heat and both temperatures. */
  readonly sun: 'measured' | 'panels' | 'none';
  readonly wind: boolean;
  readonly house:
    | {
        readonly lossPerDegree: Interval;
        /** W/K of the plan's own house by the same fit to the same days in the same weather, and how many times it the log's is. */
        readonly planned?: number;
        readonly times?: Interval;
        readonly aperture?: Interval;
        /** m² of the plan's own house by the same fit; only told, since a winter does not say which windows. */
        readonly plannedAperture?: number;
        readonly base: number;
        readonly points: readonly LogDay[];
      }
    | { readonly weak: Weak | 'no-columns' };
  /** Hours in which the house forgets, where its temperature moved enough to tell. */
  readonly warmth?: { readonly slowHours: Interval; readonly fastHours: Interval; readonly lossPerDegree: Interval };
  /** What the columns of the whole house and the battery say, where there are any. */
  readonly beside?: LogBeside;
  /** Power drawn over what the plan expects for the same heat at the same cold; only where heat is measured. */
  readonly power?: Interval;
  /** The likeliest day from which the same cold takes more or less power, or heat where power is not logged. */
  readonly change?: {
    readonly day: number;
    /** The earliest and latest day that the log leaves open. */
    readonly dayFrom: number;
    readonly dayTo: number;
    readonly share: number;
    readonly low: number;
    readonly high: number;
    readonly chance: number;
    /** A change half way through that nine of ten such logs would show. */
    readonly least: number;
    readonly of: 'power' | 'heat';
    /** For the same heat, where heat is measured: then only the unit can have changed. Else for the same weather. */
    readonly by: 'heat' | 'weather';
  };
};

/** A log of the project: pending until its job is done. */
export type Log = { readonly id: string; readonly name: string; readonly learned: Outcome<LogAnswers> };
