import type { ZoneOrder } from './zoneOrder.ts';

/**
 * A building laid out once for a loop in time: typed arrays by slab, by zone and by mode; extensive (whole areas), W/K.
 * Zone z has its air at node 2z and its radiation at node 2z + 1.
 */
export type Layout = {
  readonly stepSeconds: number;
  readonly perRow: number;
  readonly stepsPerDay: number;
  /** Steps of weather; the year closes on itself. */
  readonly count: number;
  readonly zoneIds: readonly string[];
  readonly zones: number;
  readonly slabs: number;
  readonly systems: number;
  readonly slab: SlabArrays;
  readonly mode: ModeArrays;
  readonly zone: ZoneArrays;
  readonly order: ZoneOrder;
  readonly sun: SunArrays;
  readonly air: AirArrays;
  readonly control: ControlArrays;
  readonly ducts: DuctArrays;
  /** °C by row, one after the other, of faces whose other side is given. */
  readonly given: Float64Array;
  readonly rows: number;
};

/** What the other side of a slab is. */
export const inZone = 0;
export const inOpenAir = 1;
export const isGiven = 2;

/** Slabs between zones first, then those to the open air, then those whose other side is given. */
export type SlabArrays = {
  readonly ids: readonly string[];
  /** Where those to the open air begin, and those whose other side is given. */
  readonly outdoors: number;
  readonly given: number;
  /** By slab, in the places of `slabSlots.ts`: what never changes; where `State.slab` begins. */
  readonly constants: Float64Array;
  readonly firstMode: Int32Array;
  /** Zone of the inside face; of the other face, or which given series, or -1. */
  readonly zone1: Int32Array;
  readonly kind2: Int32Array;
  readonly zone2: Int32Array;
};

export type ModeArrays = {
  readonly decay: Float64Array;
  readonly q1: Float64Array;
  readonly q2: Float64Array;
  readonly energy: Float64Array;
};

export type ZoneArrays = {
  /** J/K of air and contents, and that over a step, W/K. */
  readonly capacity: Float64Array;
  readonly inertia: Float64Array;
  /** kg of dry air over a step, kg/s; kg/s for each kg/kg that surfaces give while they follow the air, and the share of what they held that they keep. */
  readonly airFlow: Float64Array;
  readonly followFlow: Float64Array;
  readonly kept: Float64Array;
  readonly wideRange: Int32Array;
  /** W to the air and to the radiation, kg/s of vapour, by zone and hour of the day. */
  readonly gainAir: Float64Array;
  readonly gainRadiant: Float64Array;
  readonly vapour: Float64Array;
};

/** Sun on faces: of each entry, `weight` times the series `from` comes to the number of a slab at `into`. */
export type SunArrays = {
  /** W/m² or W of all series, step after step. */
  readonly series: Float32Array;
  readonly count: number;
  /** 1 for steps in which any series is above zero. */
  readonly lit: Uint8Array;
  /** Entries of outer faces come first: so many. */
  readonly outer: number;
  readonly into: Int32Array;
  readonly from: Int32Array;
  readonly weight: Float64Array;
};

export type AirArrays = {
  /** kg/s of outdoor air into each zone, always; from a fan, by zone and hour of the day. */
  readonly constant: Float64Array;
  readonly fan: Float64Array;
  /** Leaks driven by stack and wind, one after the other: shares by zone, coefficients, exponent, where part of it leaves. */
  readonly leaks: number;
  readonly leakShare: Float64Array;
  readonly leakStack: Float64Array;
  readonly leakWind: Float64Array;
  readonly leakExponent: Float64Array;
  readonly leakUpZone: Int32Array;
  readonly leakUpShare: Float64Array;
  readonly passages: number;
  readonly passageFrom: Int32Array;
  readonly passageTo: Int32Array;
  readonly passageBuoyant: Float64Array;
  readonly passageSteady: Float64Array;
  /** Pa */
  readonly pressure: number;
};

export type ControlArrays = {
  /** Node of the thermostat. */
  readonly sensor: Int32Array;
  /** Share of a system's heat by system and zone. */
  readonly share: Float64Array;
  /** °C by system and step of the day; far off where it is off. */
  readonly heatTo: Float64Array;
  readonly coolTo: Float64Array;
  /** W by system and row of weather, or by system alone where `mostRows` is 1. */
  readonly mostRows: number;
  readonly heatMost: Float64Array;
  readonly coolMost: Float64Array;
  /** kg/kg a zone's air is dried to while it is cooled. */
  readonly driest: Float64Array;
};

/** Duct systems, one after the other, each by level; `zones` long by zone, `zones²` long by receiving and giving zone. */
export type DuctArrays = {
  readonly count: number;
  /** Which duct system carries a system's heat, -1 for none. */
  readonly ofSystem: Int32Array;
  readonly firstLevel: Int32Array;
  readonly output: Float64Array;
  /** By level, system and zone. */
  readonly share: Float64Array;
  readonly air: Float64Array;
  readonly walls: Float64Array;
  readonly outdoor: Float64Array;
  readonly dries: Float64Array;
  readonly coilRatio: Float64Array;
};

/** Everything that changes from step to step. Allocated once. */
export type State = {
  /** °C at the nodes; and what they would be if no system worked in the step. */
  readonly t: Float64Array;
  readonly free: Float64Array;
  /** By slab and by mode, in the places of `slabSlots.ts`. */
  readonly slab: Float64Array;
  readonly modes: Float64Array;
  /** W, positive heats; and what each system does: 0 rests, 1 heats and -1 cools to its set point, 2 and -2 at its most. */
  readonly heat: Float64Array;
  readonly control: Int32Array;
  readonly humidity: Float64Array;
  readonly buffer: Float64Array;
  /** kg/s of vapour taken out by cooling, by zone. */
  readonly dried: Float64Array;
  readonly work: Work;
};

/** Coefficients of the current row and room to calculate in. */
export type Work = {
  /** Blocks of the balance of the zones, in the places of `order`. */
  readonly matrix: Float64Array;
  /** K at each node for a watt of each system, node after node. */
  readonly response: Float64Array;
  /** Radiation in each zone against that at 20 °C. */
  readonly radiation: Float64Array;
  /** kg/s of outdoor air by zone; of air from one zone into another. */
  readonly outdoorFlow: Float64Array;
  readonly exchange: Float64Array;
  /** W/K from one zone into another: what that air carries, and what passes the walls of ducts. */
  readonly carries: Float64Array;
  readonly walls: Float64Array;
  /** Share of each system's heat by zone, and W at its most, in this row. */
  readonly share: Float64Array;
  readonly heatMost: Float64Array;
  readonly coolMost: Float64Array;
  /** Where each duct system stands between its levels, and the part of the time its fan runs. */
  readonly ductLevel: Int32Array;
  readonly ductToNext: Float64Array;
  readonly ductRunning: Float64Array;
  /** kg/s of air by zone that cold coils bring to so many kg/kg. */
  readonly drying: Float64Array;
  readonly coilRatio: Float64Array;
  readonly small: Float64Array;
  readonly smallRhs: Float64Array;
  /** °C at each system's thermostat with the heats as they stand. */
  readonly sensed: Float64Array;
  /** °C that each system heats and cools to in the step. */
  readonly heatAim: Float64Array;
  readonly coolAim: Float64Array;
  readonly vapourMatrix: Float64Array;
  readonly vapourDry: Float64Array;
  readonly vapourRhs: Float64Array;
  readonly vapourGiven: Float64Array;
  readonly vapourFixed: Int32Array;
  /** Which systems are held to a set point; and, for the factors kept of them: their row, the row now, how many. */
  readonly held: Int32Array;
  readonly heldOf: Int32Array;
};
