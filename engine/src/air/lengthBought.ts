import { flexibleNeeded } from '../physics/cutting/index.ts';

/**
 * m to buy for a run of so many metres: of flexible duct what is cut for it; of the others a tenth more, for ends and waste.
 * Sources: `cutting.flexible`, `air.sizing-waste` (common practice).
 */
export const lengthBought = (kind: string, run: number, slack: number): number =>
  kind === 'flexible' ? flexibleNeeded(run, slack) : run * 1.1;
