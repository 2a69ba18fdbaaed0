/**
 * Today's worth of one unit of money at the end of each of `years` years, at a real interest `rate` a year (a fraction).
 * Rate above -1, years from 0 and not whole numbers only, by the same closed form; at rate 0 it is `years`. Exact to
 * rounding for rates however small. Years of 0 or less give 0; a rate of -1 or less, or anything not finite, gives NaN.
 * Source: `paperwork.life-cost`.
 */
export function uniformPresentValue(rate: number, years: number): number {
  if (!(rate > -1) || !Number.isFinite(rate) || !Number.isFinite(years)) return Number.NaN;
  if (years <= 0) return 0;
  // 1 - (1 + r)^-n without the loss of digits that a rate near 0 brings.
  return rate === 0 ? years : -Math.expm1(-years * Math.log1p(rate)) / rate;
}
