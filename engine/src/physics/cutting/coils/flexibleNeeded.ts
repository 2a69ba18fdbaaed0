import { inch } from '../../exact.ts';

/** m that a flexible run goes over the collar at each of its two ends. Source: `cutting.flexible` (common practice). */
const overCollar = 2 * inch;

/**
 * m of flexible duct, stretched out, that a run takes: its way along the middle, over what pulling leaves of each metre, and
 * what goes over both collars. `slack` from 0 to below 1: the share of the stretched length that stays pushed together. The one
 * place that says so: sizes are priced with it, the list buys it, the cut list cuts it. Source: `cutting.flexible`.
 */
export const flexibleNeeded = (way: number, slack: number): number => way / (1 - slack) + 2 * overCollar;
