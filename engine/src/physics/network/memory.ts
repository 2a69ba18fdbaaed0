/**
 * All numbers of a network lie in one array, in records one behind the other: nodes, entries of the matrix, passages,
 * laws. In every turn of a loop machine code checks anew each array that the loop reads, so that one array takes about
 * half the time of one for every name. The kernels read records by place, the tables below by name; integers in arrays
 * of their own say where the records lie that belong together.
 */
export const NODE = 6;
export const node = {
  /** Of the matrix: diagonal, right-hand side, inverse of the diagonal. Weighted, as all of a node's balance. */
  diagonal: 0,
  right: 1,
  inverse: 2,
  /** Pa; by how much the last step changed it, and what it is. */
  change: 3,
  pressure: 4,
  /** m³/s that it needs. */
  need: 5,
} as const;

export const PASSAGE = 6;
export const passage = {
  /** m³/s. */
  flow: 0,
  /** Pa by which the pressure lost in it misses that between its ends, and m³/s per Pa there. */
  miss: 1,
  conductance: 2,
  /** What the node `from` gives and the node `to` gets of its flow, weighted as they are. */
  leave: 3,
  arrive: 4,
  /** m³/s by which the last step changed its flow. */
  change: 5,
} as const;

export const LAW = 21;
export const law = {
  /** Flow = share · flow of the passage + fixed; sign +1 where the link points along it. */
  share: 0,
  fixed: 1,
  sign: 2,
  /** What the last look found: Pa lost, and how fast that grows with flow. */
  drop: 3,
  slope: 4,
  /** Straight law of a first guess: drop = firstDrop + firstSlope · flow. */
  firstDrop: 5,
  firstSlope: 6,
  /**
   * Duct: friction drop = friction · f · q², minor loss = minor · q², 2.51 / Re = viscous / q, laminar drop =
   * laminar · q.
   */
  friction: 7,
  minor: 8,
  viscous: 9,
  laminar: 10,
  /** Between laminar and turbulent flow friction drop / q² = foot + rise · q. */
  foot: 11,
  rise: 12,
  /** Relative roughness / 3.7. */
  rough: 13,
  /** 1/√f; of what Colebrook's logarithm was last taken, and that logarithm. A solution begins with `rootStart`. */
  root: 14,
  argument: 15,
  logarithm: 16,
  rootStart: 17,
  /** m³/s to which flow is laminar and from which it is turbulent; what is no duct never gets to the latter. */
  laminarTo: 18,
  turbulentFrom: 19,
  /** 0 duct, 1 power, 2 one-way, 3 fan. */
  kind: 20,
  /** Power and one-way: coefficient, exponent, flow below which it is straight, leak. */
  coefficient: 7,
  exponent: 8,
  knee: 9,
  leak: 10,
} as const;

/** Where the records of a network begin. Entries are those right of the diagonal, and one more that nobody reads. */
export type Regions = {
  /** The same where the matrix is symmetric. */
  readonly upper: number;
  readonly lower: number;
  readonly passages: number;
  /** Laws of a passage lie side by side, those of fixed flow last. */
  readonly laws: number;
  readonly end: number;
};

export function regionsOf(count: {
  readonly nodes: number;
  readonly entries: number;
  readonly symmetric: boolean;
  readonly passages: number;
  readonly laws: number;
}): Regions {
  const upper = NODE * count.nodes;
  const lower = count.symmetric ? upper : upper + count.entries + 1;
  const passages = lower + count.entries + 1;
  // One more, of zero flow, for links whose flow is fixed.
  const laws = passages + PASSAGE * (count.passages + 1);
  return { upper, lower, passages, laws, end: laws + LAW * count.laws };
}
