/** Whole pseudo-random numbers of 32 bits from a seed: the same everywhere. Marsaglia's xorshift, 2003. */
export type Seeded = { state: number };

export const seeded = (seed: number): Seeded => ({ state: (Math.imul(seed | 0, 0x9e3779b1) ^ 0x2545f491) | 1 });

/** A whole number from 0 to below `count`. */
export function below(r: Seeded, count: number): number {
  let x = r.state;
  x ^= x << 13;
  x ^= x >>> 17;
  x ^= x << 5;
  r.state = x;
  return (x >>> 0) % count;
}

/** A number above 0 and below 1. */
export const fraction = (r: Seeded): number => (below(r, 0x3fffffff) + 0.5) / 0x3fffffff;
