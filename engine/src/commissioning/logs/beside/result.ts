import type { LogQuantity } from '@kneewall/project';
import type { ChangePoint, Interval } from '../../../physics/fitting/index.ts';

/** Why a column that the log has teaches nothing. */
export type Untold = 'no-unit' | 'few-days' | 'net-meter' | 'no-house' | 'no-sun' | 'never-alone' | 'no-tie';

/** What a log says beside the house's loss and the unit: the rest of the household, and what the inverter takes for itself. */
export type LogBeside = {
  /** The house without the unit: kWh a day, W by the hour of the day (its middle), whole days they are from, and whether it heats too. */
  readonly household?: {
    readonly daily: Interval;
    readonly hours: readonly number[];
    readonly days: number;
    readonly heats: boolean;
  };
  /** The whole house where the unit is not logged: kWh a day whatever the weather, and more for each degree below a point. */
  readonly byWeather?: ChangePoint;
  /** Nights on the battery alone: W that go to nothing, and W out of the battery for each W used. */
  readonly inverter?: { readonly idle: Interval; readonly each: Interval; readonly hours: number };
  readonly untold: readonly { readonly column: LogQuantity; readonly why: Untold }[];
};
