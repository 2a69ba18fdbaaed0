/** Seeded numbers from 0 to 1 for random cases that come out the same every time (Lehmer's generator). */
export function chance(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 48_271) % 2_147_483_647;
    return state / 2_147_483_647;
  };
}
