import type { FanCurve } from './fanCurve.ts';
import type { CompiledPassages, Matrix } from './matrix.ts';
import type { Regions } from './memory.ts';
import type { Reduced } from './passages.ts';
import type { NetworkProblem } from './problems.ts';
import type { Tree } from './weights.ts';

/** Where the law of each link lies in a network's memory. */
export type CompiledLaws = {
  /** Record of the law of each link, in the order of the network as told; of the passage it is part of. */
  readonly place: Int32Array;
  readonly passage: Int32Array;
  /** From here on laws are of fixed flow: their drops stand for good. */
  readonly still: number;
  /** Links that are no ducts and whose flow is not fixed: record of the law, of the passage, number of the link. */
  readonly others: Int32Array;
  /** By number of the link. */
  readonly fans: (FanCurve | undefined)[];
};

/**
 * A network laid out once in flat arrays: dead ends and pieces in series taken out, unknown pressures in the order of
 * their elimination, and the scratch of its solver. One solution at a time.
 */
export type CompiledNetwork = {
  readonly nodeIds: readonly string[];
  readonly linkIds: readonly string[];
  readonly problems: readonly NetworkProblem[];
  /** A problem leaves nothing to solve. */
  readonly broken: boolean;
  /** All its numbers: see `memory.ts`. */
  readonly memory: Float64Array;
  readonly regions: Regions;
  readonly laws: CompiledLaws;
  readonly passages: CompiledPassages;
  readonly matrix: Matrix;
  readonly whole: WholeNetwork;
  /** Of what shares are written from anew. */
  readonly reduced: Reduced;
  readonly tree: Tree;
  /**
   * Worst miss and largest drop of a passage at the last look, Pa; slope of power along the last step, at its end and at
   * its beginning.
   */
  readonly report: Float64Array;
};

/** The network as told, for pressures at every node and the balance of air at the free ones. */
export type WholeNetwork = {
  /** Four for each link: nodes `from` and `to`, records of its law and of its passage. */
  readonly ends: Int32Array;
  /** Two for each link: shares that leave and arrive. */
  readonly shares: Float64Array;
  readonly outflow: Float64Array;
  readonly free: Int32Array;
  /** Record of each node; -1: it follows from another. */
  readonly row: Int32Array;
  /** Three for each node that does: node, node it follows from, record of the law of the link between. */
  readonly follow: Int32Array;
  /** Whether pressure falls (1) or rises (-1) along that link. */
  readonly followSign: Float64Array;
  readonly sum: Float64Array;
};
