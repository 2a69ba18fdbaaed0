/** Values below which the given shares of a sample lie, on straight lines between its members (type 7 of Hyndman & Fan 1996). */
export function percentiles(values: ArrayLike<number>, shares: readonly number[]): number[] {
  const sorted = Float64Array.from(values).sort();
  return shares.map((share) => {
    const at = share * (sorted.length - 1);
    const low = Math.floor(at);
    const a = sorted[low] ?? Number.NaN;
    const b = sorted[Math.min(low + 1, sorted.length - 1)] ?? a;
    return a + (b - a) * (at - low);
  });
}
