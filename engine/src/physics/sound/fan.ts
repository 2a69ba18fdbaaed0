import { inch } from '../exact.ts';
import { octaveBands } from './bands.ts';

/** Specific sound power of forward-curved blowers by octave band, dB re 1 pW at 1 cfm and 1 inH2O; its blades' tone at 500 Hz. */
const specific = [53, 53, 43, 36, 36, 31, 26, 21] as const;
const blades = { band: 500, adds: 2 } as const;
const cubicFootPerMinute = 0.47194745e-3;
const inchWater = 249.08891;

/**
 * Sound power of a forward-curved blower near its best point, by octave band, dB re 1 pW: m³/s and Pa above zero. Given
 * for fans of plants; a small blower of a house may be far off it. Source: `sound.fan` (from memory).
 */
export const fanSound = (flow: number, pressure: number): number[] =>
  octaveBands.map(
    (band, i) =>
      (specific[i] ?? 0) +
      10 * Math.log10(flow / cubicFootPerMinute) +
      20 * Math.log10(pressure / inchWater) +
      (band === blades.band ? blades.adds : 0),
  );

/** dB by which the same blower is louder at the same flow against another pressure, Pa above zero. Source: `sound.fan`. */
export const pressureRise = (pressure: number, reference: number): number => 20 * Math.log10(pressure / reference);

/** Speed of sound in air of rooms, m/s. */
const soundSpeed = 343;

/** dB that do not leave a duct which ends flush in a wall or ceiling; Hz, m. Source: `sound.path` (from memory). */
export const endReflection = (band: number, diameter: number): number =>
  10 * Math.log10(1 + ((0.7 * soundSpeed) / (Math.PI * band * diameter)) ** 2);

/** dB that a round bend without lining keeps back: by kHz times inches. Source: `sound.path` (from memory). */
export function bendLoss(band: number, diameter: number): number {
  const size = (band / 1000) * (diameter / inch);
  return size < 1.9 ? 0 : size < 3.8 ? 1 : size < 7.5 ? 2 : 3;
}
