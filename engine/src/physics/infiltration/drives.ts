import { rad } from '../exact.ts';
import { type Envelope, shelterOf } from './enhanced.ts';

const gravity = 9.80665;
/**
 * Pa by which the air indoors gains on the air outdoors for each metre upwards: the stack effect. Densities kg/m³; negative
 * where outdoors is the warmer. Source: `infiltration.stack`.
 */
export const stackGradient = (outdoors: number, indoors: number): number => (outdoors - indoors) * gravity;

/**
 * Pressure coefficient of a wall of a low house of square plan, mean over the wall; degrees between the wind and the
 * way the wall faces, any number. Source: `infiltration.wind-pressure` (Swami and Chandra 1987).
 */
export function wallPressureCoefficient(angle: number): number {
  const turned = Math.abs(angle) % 360;
  const a = rad * (turned > 180 ? 360 - turned : turned);
  const half = Math.sin(a / 2);
  return (
    0.6 *
    Math.log(1.248 - 0.703 * half - 1.175 * Math.sin(a) ** 2 + 0.769 * Math.cos(a / 2) + 0.717 * Math.cos(a / 2) ** 2)
  );
}

/** The same, mean of four walls: what spaces stand at that are open to every side, such as a vented attic. */
export const meanPressureCoefficient = (angle: number): number =>
  [0, 90, 180, 270].reduce((a, turn) => a + wallPressureCoefficient(angle + turn) / 4, 0);

/**
 * Wind at the eaves, m/s, from the wind at a weather station: the leakage model's own shelter and height.
 * Source: `infiltration.enhanced`.
 */
export const eaveWind = (envelope: Pick<Envelope, 'storeys' | 'shelter'>, wind: number): number =>
  shelterOf(envelope) * wind;
