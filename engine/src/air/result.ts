import type { BlowerTable } from '../equipment/result.ts';
import type { FanPoint } from '../physics/network/index.ts';
import type { Outcome } from '../plan/outcome.ts';
import type { Spread } from '../plan/scenario.ts';
import type { ResultBase } from '../plan/trade.ts';
import type { AirBalance } from './balance/result.ts';
import type { AirCurves } from './curves.ts';
import type { ShutCases } from './doors/shutCases.ts';
import type { DrawnPiece } from './drawnPieces.ts';
import type { Rung } from './ladder.ts';
import type { DuctSizing } from './sizing/sizeDucts.ts';
import type { There } from './there.ts';
import type { UnitEnd } from './unitEnd.ts';

/** One stretch of duct in plain numbers; lengths m, leakage as a share of what it carries, insulation m²K/W. */
export type DuctSection = {
  readonly id: string;
  readonly name: string;
  readonly side: 'supply' | 'return';
  /** The section nearer the air handler, or nothing at the air handler itself. */
  readonly from?: string;
  readonly kind: 'flexible' | 'round' | 'rectangular' | 'board';
  /** Hydraulic diameter and cross-section. */
  readonly diameter: number;
  readonly area: number;
  readonly length: number;
  /** Inner surface, m². */
  readonly surface: number;
  readonly roughness: number;
  /** Times the friction of a straight, fully stretched run. */
  readonly frictionFactor: number;
  /** Sum of loss coefficients on this section's velocity pressure. */
  readonly lossCoefficient: number;
  /** What of that comes of sag between hangers, where it sags: it stays with the run in any size of flexible duct. */
  readonly sagLoss?: number;
  /** What it meets at the unit, and what of the losses comes of the piece between. */
  readonly unitEnd?: UnitEnd & { readonly loss: number };
  readonly insulation: number;
  readonly leakage: number;
  readonly place: 'attic' | 'below' | 'inside';
  /** m from hanger to hanger; counts for flexible duct. */
  readonly supports: number;
};

export type Terminal = {
  readonly id: string;
  readonly name: string;
  readonly section: string;
  readonly room: string;
  readonly faceArea: number;
  readonly freeArea: number;
  /** Pa s²/m⁶: pressure = resistance × flow². */
  readonly resistance: number;
};

/** Everything the flows hang on; plain data, so that a worker can solve it again at other conditions. */
export type AirModel = {
  readonly sections: readonly DuctSection[];
  readonly terminals: readonly Terminal[];
  /** Pa at that face velocity (m/s), exponent of the velocity, face area m². */
  readonly filter: {
    readonly pressure: number;
    readonly velocity: number;
    readonly exponent: number;
    readonly area: number;
  };
  /** Fixed loss beyond the unit itself, Pa at the design flow. */
  readonly added: number;
  readonly blower: BlowerTable;
  /** Pa, atmospheric. */
  readonly pressure: number;
};

/** Flows as solved: m³/s at the blower's air, Pa. */
export type AirFlows = {
  readonly converged: boolean;
  readonly residual: number;
  readonly flow: number;
  /** Across the air handler from return to supply plenum, filter outside it included. */
  readonly staticPressure: number;
  readonly filterPressure: number;
  readonly sections: Readonly<Record<string, number>>;
  readonly terminals: Readonly<Record<string, number>>;
  /** Pressure lost along each section, fittings included, Pa. */
  readonly drops: Readonly<Record<string, number>>;
  readonly supplyLeak: number;
  readonly returnLeak: number;
};

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
