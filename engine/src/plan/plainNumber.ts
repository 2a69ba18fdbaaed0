/** A number of a working as it was computed, to four figures; no unit is changed. */
export function plainNumber(value: number): string {
  if (value === 0) return '0';
  const size = Math.abs(value);
  if (size >= 1e6 || size < 1e-4) return value.toExponential(3);
  return String(Number(value.toPrecision(4)));
}
