import type { AirModel } from '../../air/ductwork.ts';

/** What a visit's flows are balanced from: plain data, so that equal ones make equal jobs. */
export type BalancingInputs = {
  /** Ducts as drawn, the blower at the visit's setting. */
  readonly air: AirModel;
  /** Degrees from open of each damper that is drawn in a section, and of those noted at the visit. */
  readonly drawn: Readonly<Record<string, number>>;
  readonly noted: Readonly<Record<string, number>>;
  /** What part of the air each room is to get; they need not sum to 1. */
  readonly shares: Readonly<Record<string, number>>;
  /** m³/s at every supply register, all by one way of reading. */
  readonly read: Readonly<Record<string, number>>;
  /** What is wrong with all readings alike, and with each one alone: shares of a reading. */
  readonly common: number;
  readonly alone: number;
  /** Pa that the unit allows, where that is known. */
  readonly staticMost?: number;
};

/** One damper to set. */
export type Move = {
  readonly place: string;
  readonly name: string;
  readonly room: string;
  readonly at: 'collar' | 'register';
  /** Where one stands to do it: places of one spot are done in one go. */
  readonly spot: string;
  readonly inAttic: boolean;
  /** Loss coefficients before and after. */
  readonly before: number;
  readonly after: number;
  /** Degrees from open, as a handle is marked; absent where no table tells them. */
  readonly from?: number;
  readonly to?: number;
};

export type RunFound = {
  readonly place: string;
  readonly name: string;
  /** Times the resistance that the plan gives this run; standard deviation of its natural logarithm. */
  readonly factor: number;
  readonly doubt: number;
};

/** A room's air as a part of its wanted share: as found, and after the moves. */
export type RoomShare = {
  readonly room: string;
  readonly wanted: number;
  readonly now: number;
  readonly after: number;
};

export type RegisterThen = {
  readonly register: string;
  readonly read: number;
  /** What the same way of reading should show after the moves, m³/s. */
  readonly after: number;
};

export type Balancing = {
  /** `good`: nothing to move; `move`: all rooms come into the band; `short`: dampers alone do not bring them there. */
  readonly word: 'good' | 'move' | 'short';
  readonly runs: readonly RunFound[];
  readonly rooms: readonly RoomShare[];
  /** In the order in which to do them. */
  readonly moves: readonly Move[];
  readonly registers: readonly RegisterThen[];
  /** Registers whose reading tells most after the moves, the best first. */
  readonly checks: readonly string[];
  /** For rooms that stay short: times the present diameter that their runs would need. */
  readonly larger: Readonly<Record<string, number>>;
  /** Pa across the air handler before and after. */
  readonly staticNow: number;
  readonly staticThen: number;
  /** Sets of dampers that were tried. */
  readonly tried: number;
};
