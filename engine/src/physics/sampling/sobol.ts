const bits = 32;

/**
 * Scrambled Sobol points, row by row in (0, 1): dimensions fastest. Equal seeds give equal points. Each dimension takes
 * the next primitive polynomial; its first direction numbers are odd numbers drawn from the seed, and every dimension is
 * shifted digit by digit, so that each dimension alone still fills every interval of 2^-k with the first 2^k points.
 * Sobol 1967; digital shift as in Owen 2003 (from memory). Dimensions 1 to 300, count up to 2^31.
 */
export function sobolPoints(dimensions: number, count: number, seed: number): Float64Array {
  const points = new Float64Array(dimensions * count);
  const polynomials = primitivePolynomials(dimensions - 1);
  for (let d = 0; d < dimensions; d++) {
    const direction = directionNumbers(d === 0 ? undefined : polynomials[d - 1], seed, d);
    let x = stirred(seed, 7919 + d);
    for (let i = 0; i < count; i++) {
      points[i * dimensions + d] = (x + 0.5) / 2 ** bits;
      // Gray code: the next point differs in the direction of the lowest zero bit.
      x = (x ^ (direction[31 - Math.clz32(~i & (i + 1))] ?? 0)) >>> 0;
    }
  }
  return points;
}

/** A number of 32 bits that hangs on both in no simple way (the finaliser of MurmurHash3, public domain). */
function stirred(seed: number, of: number): number {
  let h = (Math.imul(seed, 0x9e3779b1) + Math.imul(of, 0x85ebca6b)) >>> 0;
  h = Math.imul(h ^ (h >>> 16), 0x85ebca6b);
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
  return (h ^ (h >>> 16)) >>> 0;
}

/** Direction numbers of one dimension by the recurrence of its polynomial; without one, the van der Corput sequence. */
function directionNumbers(polynomial: number | undefined, seed: number, dimension: number): Uint32Array {
  const v = new Uint32Array(bits);
  if (polynomial === undefined) return v.map((_, i) => 2 ** (bits - 1 - i));
  const degree = 31 - Math.clz32(polynomial);
  for (let i = 0; i < bits; i++) {
    if (i < degree) {
      const odd = (stirred(seed, dimension * 64 + i) % 2 ** i) * 2 + 1;
      v[i] = odd * 2 ** (bits - 1 - i);
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
