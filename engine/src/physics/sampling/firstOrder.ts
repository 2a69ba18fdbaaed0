/** Means and counts of outputs in equal groups of the samples ordered by one input. */
export function groupedByInput(samples: Float64Array, dimensions: number, input: number, groups: number): Int32Array {
  const n = samples.length / dimensions;
  const order = Array.from({ length: n }, (_, i) => i).sort(
    (a, b) => (samples[a * dimensions + input] ?? 0) - (samples[b * dimensions + input] ?? 0) || a - b,
  );
  const group = new Int32Array(n);
  order.forEach((i, rank) => {
    group[i] = Math.floor((rank * groups) / n);
  });
  return group;
}

/**
 * First-order index of each input: the share of the output's variance that goes once the input is known, from one set of
 * samples (rows, dimensions fastest), by the variance of the means of equal groups. The variance that such means have by
 * chance alone is taken off, so that an input without effect comes out at nought; never below. A constant output gives
 * noughts. Plischke 2010, bias as in the one-way analysis of variance (from memory).
 */
export function firstOrderIndices(
  samples: Float64Array,
  outputs: Float64Array,
  dimensions: number,
  groups = 24,
): number[] {
  const n = outputs.length;
  const mean = outputs.reduce((a, y) => a + y, 0) / n;
  const variance = outputs.reduce((a, y) => a + (y - mean) ** 2, 0) / n;
  if (!(variance > 1e-18 * mean * mean)) return Array.from({ length: dimensions }, () => 0);
  return Array.from({ length: dimensions }, (_, d) => {
    const group = groupedByInput(samples, dimensions, d, groups);
    const sums = new Float64Array(groups);
    const counts = new Float64Array(groups);
    outputs.forEach((y, i) => {
      const g = group[i] ?? 0;
      sums[g] = (sums[g] ?? 0) + y;
      counts[g] = (counts[g] ?? 0) + 1;
    });
    let between = 0;
    sums.forEach((sum, g) => {
      const count = counts[g] ?? 1;
      between += (count / n) * (sum / count - mean) ** 2;
    });
    const within = variance - between;
    const byChance = (within * (groups - 1)) / (n - groups);
    return Math.max(0, (between - byChance) / variance);
  });
}
