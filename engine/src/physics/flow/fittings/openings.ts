/**
 * Losses where a duct ends or changes its area, on the velocity named. Source: `flow.fittings`; the entry with a rounded
 * lip and the exit looked up in a general fluid library, the others from memory or common practice.
 */
export const entries = { flush: 0.5, projecting: 0.95, rounded: 0.03 } as const;
export const exitLoss = 1;
/** Gradual contraction of 30 to 45 degrees in all, on the small duct's velocity. */
export const gradualContraction = 0.05;

/** Sudden widening, on the small duct's velocity: (1 - A₁/A₂)²; small over large area, 0 to 1. Source: `flow.borda-carnot`. */
export const suddenExpansion = (ratio: number): number => (1 - ratio) ** 2;

/** Sudden narrowing, on the small duct's velocity: 0.5 (1 - A₂/A₁)^¾; small over large area, 0 to 1. Source: `flow.idelchik`. */
export const suddenContraction = (ratio: number): number => 0.5 * (1 - ratio) ** 0.75;
