/**
 * Wet bulb, °C, of air at `t` °C and `humidity` % at sea level, within -1 to +0.65 K over 5 to 99 % and -20 to 50 °C.
 * Source: `access.stull`.
 */
export const wetBulbNear = (t: number, humidity: number): number =>
  t * Math.atan(0.151977 * Math.sqrt(humidity + 8.313659)) +
  Math.atan(t + humidity) -
  Math.atan(humidity - 1.676331) +
  0.00391838 * humidity ** 1.5 * Math.atan(0.023101 * humidity) -
  4.686035;

/** °C of the index that work in heat is limited by, from natural wet bulb and globe; in the sun also the air. Source: `access.wbgt`. */
export const wbgtInside = (wet: number, globe: number): number => 0.7 * wet + 0.3 * globe;
export const wbgtInSun = (wet: number, globe: number, air: number): number => 0.7 * wet + 0.2 * globe + 0.1 * air;

/** Mean of values by the time that each takes. */
export const timeMean = (parts: readonly (readonly [minutes: number, value: number])[]): number =>
  parts.reduce((sum, [minutes, value]) => sum + minutes * value, 0) /
  parts.reduce((sum, [minutes]) => sum + minutes, 0);

/** °C of the index for somebody not used to heat, and used to it, who gives off `work` W, the whole person's. Source: `access.heat-limit`. */
export const alertLimit = (work: number): number => 59.9 - 14.1 * Math.log10(work);
export const exposureLimit = (work: number): number => 56.7 - 11.5 * Math.log10(work);

export type Effort = 'light' | 'moderate' | 'heavy' | 'veryHeavy';
/** W that a person gives off: resting, and by effort. Source: `access.efforts`. */
export const restWork = 115;
export const effortWork: Readonly<Record<Effort, number>> = { light: 180, moderate: 300, heavy: 415, veryHeavy: 520 };

/** Minutes of work in an hour at the most, and °C: used to heat, not used to it, by effort. Source: `access.screening`. */
const screening: readonly (readonly [number, Readonly<Record<Effort, readonly [number, number] | undefined>>])[] = [
  [60, { light: [31, 28], moderate: [28, 25], heavy: undefined, veryHeavy: undefined }],
  [45, { light: [31, 28.5], moderate: [29, 26], heavy: [27.5, 24], veryHeavy: undefined }],
  [30, { light: [32, 29.5], moderate: [30, 27], heavy: [29, 25.5], veryHeavy: [28, 24.5] }],
  [15, { light: [32.5, 30], moderate: [31.5, 29], heavy: [30.5, 28], veryHeavy: [30, 27] }],
];

/** °C at which so many minutes (60, 45, 30, 15) of an hour may be worked; nothing where the table has none. */
export function screeningLimit(minutes: number, effort: Effort, used: boolean): number | undefined {
  return screening.find(([most]) => most === minutes)?.[1][effort]?.[used ? 0 : 1];
}

/** Minutes of an hour that may be worked at an index: 60, 45, 30, 15 or none; the rest is spent where it is cool. */
export function minutesAnHour(index: number, effort: Effort, used: boolean): number {
  const most = [60, 45, 30, 15].find((minutes) => index <= (screeningLimit(minutes, effort, used) ?? -Infinity));
  return most ?? 0;
}

/** The heat index of a weather service, °F from °F and %, with its adjustments. Source: `access.heat-index`. */
export function heatIndex(t: number, rh: number): number {
  const simple = 0.5 * (t + 61 + (t - 68) * 1.2 + rh * 0.094);
  // It is a mean with the air's temperature already: that mean decides, not a second one.
  if (simple < 80) return simple;
  const full =
    -42.379 +
    2.04901523 * t +
    10.14333127 * rh -
    0.22475541 * t * rh -
    6.83783e-3 * t * t -
    5.481717e-2 * rh * rh +
    1.22874e-3 * t * t * rh +
    8.5282e-4 * t * rh * rh -
    1.99e-6 * t * t * rh * rh;
  if (rh < 13 && t >= 80 && t <= 112) return full - ((13 - rh) / 4) * Math.sqrt((17 - Math.abs(t - 95)) / 17);
  if (rh > 85 && t >= 80 && t <= 87) return full + ((rh - 85) / 10) * ((87 - t) / 5);
  return full;
}
