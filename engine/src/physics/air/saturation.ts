/**
 * Saturation pressure of water, over ice below 0 °C (the triple point, 0.01 °C, joins the branches to 1e-4).
 * °C in, Pa out. Valid -100 to 200; beyond it extrapolates and stays finite. NaN gives NaN. Never throws.
 * Source: `moist-air.saturation` (Hyland & Wexler 1983 as in ASHRAE Fundamentals 2017 ch. 1, coefficients from memory).
 */
export const saturationPressure = (t: number): number => Math.exp(lnSaturation(t));

/** Its logarithm, for searches. */
export function lnSaturation(t: number): number {
  const tK = t + 273.15;
  return t < 0.01 ? overIce(tK) : overWater(tK);
}

/** d ln(p)/dT, 1/K: lets searches step by Newton. */
export function saturationSlope(t: number): number {
  const k = t + 273.15;
  const inverse = 1 / k;
  return t < 0.01
    ? inverse * (4.1635019 + 5.6745359e3 * inverse) -
        9.677843e-3 +
        k * (2 * 6.2215701e-7 + k * (3 * 2.0747825e-9 - k * (4 * 9.484024e-13)))
    : inverse * (6.5459673 + 5.8002206e3 * inverse) - 4.8640239e-2 + k * (2 * 4.1764768e-5 - k * (3 * 1.4452093e-8));
}

const overIce = (k: number): number =>
  -5.6745359e3 / k +
  6.3925247 +
  k * (-9.677843e-3 + k * (6.2215701e-7 + k * (2.0747825e-9 - k * 9.484024e-13))) +
  4.1635019 * Math.log(k);

const overWater = (k: number): number =>
  -5.8002206e3 / k + 1.3914993 + k * (-4.8640239e-2 + k * (4.1764768e-5 - k * 1.4452093e-8)) + 6.5459673 * Math.log(k);
