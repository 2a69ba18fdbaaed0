import type { Channel } from '../../coupling/asBuilt/system.ts';
import type { FaultKind } from './faults.ts';

/** What every channel would show with a cause at one of its severities; weights of a cause sum to 1. */
export type Node = { readonly size: number; readonly weight: number; readonly values: readonly number[] };

export type Cause = {
  /** The kind, and the terminal after a colon where it is one of a run. */
  readonly id: string;
  readonly kind: FaultKind;
  readonly subject?: string;
  readonly prior: number;
  readonly nodes: readonly Node[];
};

/** Something of the plan that is not known exactly, and by how much one standard deviation of it moves each channel. */
export type Doubt = { readonly id: string; readonly moves: readonly number[] };

/** All that is computed beforehand for a state: what follows a reading is closed form. */
export type ResponseTable = {
  readonly channels: readonly Channel[];
  /** With nothing wrong. */
  readonly base: readonly number[];
  readonly causes: readonly Cause[];
  readonly doubts: readonly Doubt[];
  /** Causes, by id, whose effect the data sheet does not reach in this state: they are not ruled out. */
  readonly lost: readonly string[];
  /** The sound unit: flow m³/s, W with strips, air kg/m³, its blower's table and how thin the air is against the table's. */
  readonly unit: {
    readonly flow: number;
    readonly sensible: number;
    readonly density: number;
    readonly points: readonly { readonly flow: number; readonly pressure: number }[];
    readonly thinness: number;
  };
};
