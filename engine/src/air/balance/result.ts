import type { Outcome } from '../../plan/outcome.ts';
import type { AirModel } from '../ductwork.ts';
import type { DamperPlace } from './places.ts';

export type Season = 'heating' | 'cooling';

/**
 * How a damper stands: open; turned; `beyond`: as far as the published table goes and still too little; `shut`: as far,
 * since its room is to get nothing.
 */
export type DamperSetting = {
  readonly place: DamperPlace;
  readonly set: 'open' | 'turned' | 'beyond' | 'shut';
  /** Loss coefficient on the velocity at its place. */
  readonly loss: number;
  /** Degrees from open, and the same as a hand sets it; only in a round collar, for which there is a table. */
  readonly angle?: number;
  readonly byHand?: number;
};

/** What a room gets, as a part of its share of all the air that reaches rooms; absent where its share is nothing. */
export type RoomBalance = {
  readonly room: string;
  /** Its share of the loads of all rooms with a register. */
  readonly share: number;
  /** As the ducts are drawn, with every damper open, with this season's settings, with those of the governing season. */
  readonly drawn?: number;
  readonly open?: number;
  readonly balanced?: number;
  readonly asSet?: number;
  /** m³/s when balanced. */
  readonly flow: number;
};

export type SeasonBalance = {
  readonly season: Season;
  readonly rooms: readonly RoomBalance[];
  readonly settings: readonly DamperSetting[];
  /** m³/s through the blower and Pa across the air handler when balanced. */
  readonly flow: number;
  readonly staticPressure: number;
  /** Whether the blower's table ends before every room has its share: some then stay short, their dampers open. */
  readonly limited: boolean;
  readonly rounds: number;
  readonly miss: number;
};

/** Dampers in the collars, for each season; `governs` is the one that asks more of the house. */
export type AirBalance = {
  readonly governs: Season;
  readonly heating: Outcome<SeasonBalance>;
  readonly cooling: Outcome<SeasonBalance>;
  /** m³/s through the blower with every damper open. */
  readonly openFlow: number;
  /** The ducts with the dampers of the governing season in place, where it could be balanced. */
  readonly set?: AirModel;
};
