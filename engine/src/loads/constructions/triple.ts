import type { Range } from '@kneewall/project';

/** A figure that nobody has measured, as it is written in tables. */
export type Triple = readonly [low: number, likely: number, high: number];

export const range = ([low, likely, high]: Triple): Range => ({ low, likely, high });

/** The assumed answer's likely value, between the lowest and the highest likely value that any answer has. */
export function spanned([low, likely, high]: Triple, all: readonly Triple[]): Range {
  const others = all.map(([, middle]) => middle);
  return { low: Math.min(low, ...others), likely, high: Math.max(high, ...others) };
}
