/**
 * The value below which a share u, 0 to 1, of a triangular distribution lies: low and high are its ends, likely its
 * peak. A range without width gives its value.
 */
export function triangular(
  u: number,
  range: { readonly low: number; readonly likely: number; readonly high: number },
): number {
  const { low, likely, high } = range;
  const width = high - low;
  if (width <= 0) return likely;
  const split = (likely - low) / width;
  return u < split ? low + Math.sqrt(u * width * (likely - low)) : high - Math.sqrt((1 - u) * width * (high - likely));
}
