import { rad } from '../exact.ts';

/** Declination, degrees, by day of the year (Cooper). Source: `sun.simple` (Duffie & Beckman, from memory). */
export const declinationOf = (day: number): number => 23.45 * Math.sin(((360 * (284 + day)) / 365) * rad);

/** Middle day of each month for the sun (Klein 1977). */
export const meanDays: readonly number[] = [17, 47, 75, 105, 135, 162, 198, 228, 258, 288, 318, 344];

/** Extraterrestrial normal radiation, W/m², by day of the year. */
export const extraterrestrialNormal = (day: number, constant: number): number =>
  constant * (1 + 0.033 * Math.cos(((360 * day) / 365) * rad));

/** The same by Spencer's series (1971), within 0.1 % of the true distance. Source: `sun.spencer` (from memory). */
export function extraterrestrialSpencer(day: number, constant: number): number {
  const b = (2 * Math.PI * (day - 1)) / 365;
  return (
    constant *
    (1.00011 + 0.034221 * Math.cos(b) + 0.00128 * Math.sin(b) + 0.000719 * Math.cos(2 * b) + 0.000077 * Math.sin(2 * b))
  );
}

/** Half the day's length as an angle, degrees: 0 in polar night, 180 in polar day. */
export function sunsetAngle(latitude: number, declination: number): number {
  const x = -Math.tan(latitude * rad) * Math.tan(declination * rad);
  return Math.acos(Math.max(-1, Math.min(1, x))) / rad;
}

/** Extraterrestrial radiation on the level over a day, kWh/m². */
export function extraterrestrialDay(latitude: number, day: number, constant: number): number {
  const d = declinationOf(day) * rad;
  const w = sunsetAngle(latitude, declinationOf(day)) * rad;
  const l = latitude * rad;
  return (
    ((24 / Math.PI) *
      extraterrestrialNormal(day, constant) *
      (Math.cos(l) * Math.cos(d) * Math.sin(w) + w * Math.sin(l) * Math.sin(d))) /
    1000
  );
}

/** Zenith and azimuth (clockwise from north) by solar hour, degrees, from declination. */
export function simplePosition(
  latitude: number,
  declination: number,
  solarHour: number,
): { zenith: number; azimuth: number } {
  const w = (solarHour - 12) * 15 * rad;
  const [l, d] = [latitude * rad, declination * rad];
  const height = Math.sin(l) * Math.sin(d) + Math.cos(l) * Math.cos(d) * Math.cos(w);
  const azimuth = Math.atan2(Math.sin(w), Math.cos(w) * Math.sin(l) - Math.tan(d) * Math.cos(l)) / rad;
  return { zenith: Math.acos(Math.max(-1, Math.min(1, height))) / rad, azimuth: (azimuth + 540) % 360 };
}
