/** The parts of a plan set that may be left out, in the order in which they lie. */
export const partNames = {
  checks: 'What stands against each step',
  numbers: 'Loads and pressures',
  drawings: 'Drawings',
  buy: 'What to buy',
  work: 'What to do, and when',
  readings: 'Sheets for the readings',
  workings: 'Workings',
  sources: 'Sources',
} as const;

export type PartId = keyof typeof partNames;

export const partIds = Object.keys(partNames) as readonly PartId[];
