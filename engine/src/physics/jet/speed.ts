/** Half of the middle's speed is left so far beside it, as a part of the way gone. Source: `jet.beside`. */
const halfSpeed = 0.1;

/**
 * Speed in the middle of a jet after a way, m/s: K V₀ √A₀ / x, never more than it left with. Way m, open area m², velocity
 * m/s, all above zero. Source: `jet.throw`.
 */
export const middleSpeed = (way: number, k: number, velocity: number, area: number): number =>
  Math.min(velocity, (k * velocity * Math.sqrt(area)) / way);

/** m beside the middle where half of its speed is left: a tenth of the way, never less than the opening's own radius. */
export const halfWidth = (way: number, area: number): number => Math.max(halfSpeed * way, Math.sqrt(area / Math.PI));

/**
 * Part of the middle's speed that is left so far beside it: exp(-ln 2 (r/b)²), b where half is left, above zero; both m.
 * Source: `jet.beside` (Gaussian profile of free jets, from memory).
 */
export const besideMiddle = (beside: number, half: number): number => Math.exp(-Math.LN2 * (beside / half) ** 2);
