import type { Outcome } from '../../plan/outcome.ts';
import type { Upkeep } from './upkeep.ts';

/** What the first start is made of, and whether its weather lets heating be proved. */
export type StartUp = {
  /** A unit is chosen: without one there is nothing to start. */
  readonly unit: boolean;
  /** The house makes its own power. */
  readonly ownPower: boolean;
  readonly heating: Outcome<HeatingTest>;
  /** Empty where no free time with a day is entered: nothing has a day then. */
  readonly upkeep: readonly Upkeep[];
};

/** °C. `below`: outdoors below which the unit heats steadily enough to be read. */
export type HeatingTest = { readonly below: number } & (HeatingRead | HeatingToCome);

/** It was read already: at the coldest visit in heating. */
export type HeatingRead = { readonly read: { readonly outdoor: number; readonly day: string } };

type HeatingToCome = {
  readonly read?: never;
  /** The mornings in the month of the last free time entered, 1 to 12. */
  readonly month: number;
  readonly mornings: number;
  /** The next month, in the order of the year, whose mornings are cold enough; absent where none is. */
  readonly next?: number;
};
