const bits = 32;

/** Dimensions that share one Sobol sequence. */
const together = 6;

/**
 * Points that fill a space of many dimensions evenly, row by row in (0, 1): dimensions fastest; the same for the same
 * seed. Six dimensions at a time take a Sobol sequence, shifted digit by digit by the seed; each six go through their
 * points in a shuffled order of their own, so that far dimensions are as free of each other as chance makes them while
 * each alone still fills every interval of 2^-k. Sobol 1967; latin supercube sampling, Owen 1998 (from memory). Count up
 * to 2^31.
 */
export function sobolPoints(dimensions: number, count: number, seed: number): Float64Array {
  const points = new Float64Array(dimensions * count);
  const polynomials = primitivePolynomials(together - 1);
  const directions = Array.from({ length: together }, (_, d) => directionNumbers(polynomials[d - 1]));
  for (let first = 0; first < dimensions; first += together) {
    const order = shuffled(count, seed, first);
    for (let d = first; d < Math.min(first + together, dimensions); d++) {
      const direction = directions[d - first] ?? new Uint32Array(bits);
      let x = stirred(seed, 7919 + d);
      for (let i = 0; i < count; i++) {
        points[(order[i] ?? 0) * dimensions + d] = (x + 0.5) / 2 ** bits;
        // Gray code: the next point differs in the direction of the lowest zero bit of its number.
        x = (x ^ (direction[31 - Math.clz32(~i & (i + 1))] ?? 0)) >>> 0;
      }
    }
  }
  return points;
}

/** The numbers below `count` in an order by chance (Fisher & Yates). */
function shuffled(count: number, seed: number, of: number): Uint32Array {
  const order = Uint32Array.from({ length: count }, (_, i) => i);
  for (let i = count - 1; i > 0; i--) {
    const j = stirred(seed ^ 0x5bd1e995, of * 0x10001 + i) % (i + 1);
    const kept = order[i] ?? 0;
    order[i] = order[j] ?? 0;
    order[j] = kept;
  }
  return order;
}

/** A number of 32 bits that hangs on both in no simple way (the finaliser of MurmurHash3, public domain). */
function stirred(seed: number, of: number): number {
  let h = (Math.imul(seed, 0x9e3779b1) + Math.imul(of, 0x85ebca6b)) >>> 0;
  h = Math.imul(h ^ (h >>> 16), 0x85ebca6b);
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
  return (h ^ (h >>> 16)) >>> 0;
}

/** First direction numbers of the low dimensions, odd and below 2^i. Joe & Kuo 2008 (from memory). */
const firstNumbers: Readonly<Record<number, readonly number[]>> = {
  3: [1],
  7: [1, 3],
  11: [1, 3, 1],
  13: [1, 1, 1],
  19: [1, 1, 3, 3],
};

/** Direction numbers of one dimension by the recurrence of its polynomial; without one, the van der Corput sequence. */
function directionNumbers(polynomial: number | undefined): Uint32Array {
  const v = new Uint32Array(bits);
  if (polynomial === undefined) return v.map((_, i) => 2 ** (bits - 1 - i));
  const degree = 31 - Math.clz32(polynomial);
  const first = firstNumbers[polynomial] ?? [];
  for (let i = 0; i < bits; i++) {
    if (i < degree) {
      v[i] = (first[i] ?? 1) * 2 ** (bits - 1 - i);
      continue;
    }
    let next = (v[i - degree] ?? 0) ^ ((v[i - degree] ?? 0) >>> degree);
    for (let k = 1; k < degree; k++) if ((polynomial >>> (degree - k)) & 1) next ^= v[i - k] ?? 0;
    v[i] = next >>> 0;
  }
  return v;
}

/** The first primitive polynomials over two elements, by degree, as bit patterns: 3 is x + 1, 7 is x² + x + 1. */
export function primitivePolynomials(count: number): number[] {
  const found: number[] = [];
  for (let degree = 1; found.length < count; degree++)
    for (let p = 2 ** degree + 1; p < 2 ** (degree + 1) && found.length < count; p += 2)
      if (isPrimitive(p, degree)) found.push(p);
  return found;
}

/** Whether x runs through all 2^degree - 1 remainders before it comes back to 1. */
function isPrimitive(polynomial: number, degree: number): boolean {
  const order = 2 ** degree - 1;
  let x = 1;
  for (let i = 1; i <= order; i++) {
    x <<= 1;
    if (x & (1 << degree)) x ^= polynomial;
    if (x === 1) return i === order;
  }
  return false;
}
