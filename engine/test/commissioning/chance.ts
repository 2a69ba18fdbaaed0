/** Chance from a seed: even numbers from 0 to 1, and normal ones. */
export function chanceFrom(seed: number) {
  let state = seed >>> 0;
  const even = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
  const normal = (): number => Math.sqrt(-2 * Math.log(1 - even())) * Math.cos(2 * Math.PI * even());
  return { even, normal, between: (low: number, high: number) => low + (high - low) * even() };
}

export type Chance = ReturnType<typeof chanceFrom>;
