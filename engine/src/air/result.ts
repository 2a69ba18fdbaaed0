import type { FanPoint } from '../physics/network/index.ts';
import type { Outcome } from '../plan/outcome.ts';
import type { ResultBase } from '../plan/resultBase.ts';
import type { Spread } from '../plan/scenario.ts';
import type { AirBalance } from './balance/result.ts';
import type { AirCurves } from './curves.ts';
import type { ShutCases } from './doors/shutCases.ts';
import type { DrawnPiece } from './drawnPieces.ts';
import type { AirFlows, AirModel } from './ductwork.ts';
import type { Rung } from './ladder.ts';
import type { DuctSizing } from './sizing/sizeDucts.ts';
import type { There } from './there.ts';

export type RoomAir = {
  readonly room: string;
  /** m³/s from the loads: the larger of heating and cooling. */
  readonly wanted: Outcome<number>;
  readonly governs: 'heating' | 'cooling';
  /** m³/s that reach it. */
  readonly reaches: Outcome<Spread>;
};

export type AirResult = ResultBase & {
  readonly model: Outcome<AirModel>;
  /** With room-temperature air; the agreed state refines it. */
  readonly flows: Outcome<AirFlows>;
  readonly rooms: Readonly<Record<string, RoomAir>>;
  /** The best stocked size of every duct; pending until its job is done. */
  readonly sizing: Outcome<DuctSizing>;
  /** Damper settings for each season. */
  readonly balance: Outcome<AirBalance>;
  /** What is in the house already: nothing of it is bought. */
  readonly there: There;
  /** Fittings drawn of what is to be made, and boots, with the sizes by which they are bought. */
  readonly fittings: readonly DrawnPiece[];
  readonly flow: Outcome<Spread>;
  readonly staticPressure: Outcome<Spread>;
  readonly filterVelocity: Outcome<Spread>;
  /** Every flow at which a blower can run whose table rises somewhere; absent where it falls all the way. */
  readonly operatingPoints?: Outcome<readonly FanPoint[]>;
  /** Everything with the doors shut that get shut. */
  readonly shut: Outcome<ShutCases>;
  /** Pa of each shut room against the hall, the blower alone on. */
  readonly doorPressures: Readonly<Record<string, Outcome<Spread>>>;
  /** Pa of the hall against outdoors, every exhaust on, the blower on or off, whichever is worse; where a flue is open. */
  readonly housePressure: Outcome<Spread>;
  /** Pressure used along the worst path, piece by piece, for the pressure ladder. */
  readonly ladder: Outcome<readonly Rung[]>;
  /** Blower and ducts over flow, for their picture. */
  readonly curves: Outcome<AirCurves>;
};
