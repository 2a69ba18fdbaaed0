/** A stream of numbers that looks like chance and is the same for the same seed. */
export type Chance = {
  /** Between 0 and 1, never either. */
  uniform(): number;
  /** Mean 0, spread 1. */
  normal(): number;
};

/**
 * Marsaglia's xorshift of 32 bits (Journal of Statistical Software 8(14), 2003). A seed of 0 would stand still, so the
 * seed is stirred first.
 */
export function chanceOf(seed: number): Chance {
  let state = (Math.imul(seed >>> 0, 0x9e3779b1) ^ 0x85ebca6b) >>> 0 || 1;
  const next = (): number => {
    state = xorshift(state);
    return state;
  };
  const uniform = (): number => (next() + 0.5) / 2 ** 32;
  // Box and Muller: one of the pair is enough.
  const normal = (): number => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
  return { uniform, normal };
}

/** One turn of the generator with shifts 13, 17, 5. */
export function xorshift(state: number): number {
  let x = state;
  x ^= x << 13;
  x ^= x >>> 17;
  x ^= x << 5;
  return x >>> 0;
}

/** Share of a normal distribution below z, within 7.5e-8 (Abramowitz & Stegun 26.2.17). */
export function normalShare(z: number): number {
  const t = 1 / (1 + 0.2316419 * Math.abs(z));
  const tail =
    (t *
      (0.31938153 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429)))) *
      Math.exp((-z * z) / 2)) /
    Math.sqrt(2 * Math.PI);
  return z > 0 ? 1 - tail : tail;
}
