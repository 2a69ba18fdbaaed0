import type { BlowerTable } from '../equipment/result.ts';
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
