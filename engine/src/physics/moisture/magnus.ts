// ISO 13788 (from memory): Pa over water and ice.
const water = { a: 17.269, b: 237.3 } as const;
const ice = { a: 21.875, b: 265.5 } as const;
const atFreezing = 610.5;

/** Saturation pressure as ISO 13788 has it, °C in, Pa out; valid from -60 to 60. Source: `iso-13788.saturation`. */
export const saturationMagnus = (t: number): number => {
  const { a, b } = t >= 0 ? water : ice;
  return atFreezing * Math.exp((a * t) / (b + t));
};

/** Dew point of a vapour pressure, Pa in, °C out: the inverse of the same. Pressure above zero, else not a number. */
export function dewPointMagnus(pressure: number): number {
  const x = Math.log(pressure / atFreezing);
  const { a, b } = x >= 0 ? water : ice;
  return (b * x) / (a - x);
}
