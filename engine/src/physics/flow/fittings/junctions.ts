/**
 * Diverging tees and wyes. Coefficients on the common duct's velocity; ratios are the velocity in the straight run or the
 * branch over that in the common duct. Source: `flow.idelchik` (forms of 7-15 and 7-20, from memory).
 */
export const straightRunLoss = (ratio: number): number => 0.4 * (1 - ratio) ** 2;

/** A branch that leaves at an angle, degrees, on the common duct's velocity. */
export const branchLoss = (ratio: number, angle: number): number =>
  1 + ratio ** 2 - 2 * ratio * Math.cos((angle * Math.PI) / 180);

/** The same on the branch's own velocity: C belongs to the section it is named for. Ratio above zero. */
export const branchLossOnBranch = (ratio: number, angle: number): number => branchLoss(ratio, angle) / ratio ** 2;
