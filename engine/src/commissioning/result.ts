import type { UnitSpeed } from '../equipment/result.ts';
import type { Outcome } from '../plan/outcome.ts';
import type { ResultBase } from '../plan/trade.ts';
import type { Log } from './logs/result.ts';

/** What a reading is taken with. */
export type Means = 'gauge' | 'bag' | 'vane' | 'hood' | 'thermometer' | 'meter' | 'clamp' | 'house' | 'cup' | 'watch';

/** The state in which readings were taken. °C; humidity as a share of saturation. */
export type VisitState = {
  readonly mode: 'heating' | 'cooling';
  readonly speed: Extract<UnitSpeed, 'most' | 'between' | 'least'>;
  /** The blower's setting by name, where it was not the planned one. */
  readonly setting?: string;
  readonly outdoor: number;
  readonly returnAir: number;
  readonly returnHumidity: number;
  /** Whether that was read; else it is the set point's. */
  readonly humidityRead: boolean;
  readonly attic?: number;
  /** Pa of outdoor air. */
  readonly pressure: number;
};

/** Why readings of a visit count for nothing: the unit was not in the state that they suit. */
export type Aside = 'young' | 'defrost' | 'doors';

/** One number that was read. Unit of the kind it is held against. */
export type Taken = {
  readonly id: string;
  readonly expected: string;
  readonly value: number;
  readonly means?: Means;
  readonly repeats: number;
  readonly baseTaken: 'unknown' | 'yes' | 'no';
};

export type Visit = {
  readonly id: string;
  readonly name: string;
  readonly day?: string;
  readonly state: Outcome<VisitState>;
  readonly aside?: Aside;
  readonly filter: 'unknown' | 'clean' | 'used' | 'dirty' | 'wet';
  readonly strips: 'unknown' | 'off' | 'on';
  /** W the house draws without the unit, where it was read. */
  readonly houseBase?: number;
  readonly taken: readonly Taken[];
};

export type CommissioningResult = ResultBase & {
  readonly logs: readonly Log[];
  /** In the order of the document. */
  readonly visits: Readonly<Record<string, Visit>>;
  /** Readings that name no visit, or nothing to hold them against. */
  readonly loose: readonly { readonly id: string; readonly lacks: 'visit' | 'expected' | 'value' }[];
};
