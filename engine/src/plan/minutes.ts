import type { Range } from '@kneewall/project';

/** How long a task takes, from minutes: s. */
export const minutes = (low: number, likely: number, high: number): Range => ({
  low: low * 60,
  likely: likely * 60,
  high: high * 60,
});
