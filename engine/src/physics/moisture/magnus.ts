/** The Magnus form of ISO 13788: base 610.5 Pa, factor, and offset in °C, over water and over ice. */
const base = 610.5;
const water = { factor: 17.269, offset: 237.3 } as const;
const ice = { factor: 21.875, offset: 265.5 } as const;

/**
 * Vapour pressure at saturation as ISO 13788 computes it, over ice below 0 °C. °C in, Pa out. Valid about -40 to 60;
 * outside it extrapolates down to the offset of each branch. NaN gives NaN. Never throws. Source: `iso-13788.saturation`.
 */
export function magnusPressure(t: number): number {
  const { factor, offset } = t < 0 ? ice : water;
  return base * Math.exp((factor * t) / (offset + t));
}

/**
 * Its inverse: the dew or frost point of a vapour pressure. Pa in, °C out; -Infinity for no vapour at all, NaN for a
 * negative pressure. Never throws. Source: `iso-13788.saturation`.
 */
export function magnusTemperature(pressure: number): number {
  if (pressure === 0) return Number.NEGATIVE_INFINITY;
  const l = Math.log(pressure / base);
  const { factor, offset } = l < 0 ? ice : water;
  return (offset * l) / (factor - l);
}
