import type { Cost } from '../../houseYear/measures.ts';

/** What one step of each change is. W, kWh, degrees, K. Sources: `helps.steps`. */
export const steps = {
  panels: 1000,
  battery: 5,
  tilts: [45, 60, 75, 90],
  generator: 1.5,
  setback: 3,
  cooler: 2,
  stove: 7000,
  /** K below what is wanted at which a stove that is tended for the day is lit. */
  tended: 1,
  stoveDays: 20,
} as const;

/** Money by common practice for what has no field of its own. Source: `helps.costs`. */
export const usualCosts = {
  box: { low: 100, likely: 250, high: 600 },
  indoors: { low: 300, likely: 900, high: 2500 },
  charger: { low: 250, likely: 600, high: 1500 },
  stove: { low: 1200, likely: 3000, high: 6000 },
} as const satisfies Readonly<Record<string, Cost>>;

export const free: Cost = { low: 0, likely: 0, high: 0 };

/** W/K of a box with 50 mm of foam, and W of the heater in it. Source: `offgrid.warm-box` (common practice). */
export const warmBox = { boxLoss: 2, heater: 150 } as const;
