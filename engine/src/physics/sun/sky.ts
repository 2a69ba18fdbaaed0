/** Emittance of a clear sky from the dew point, °C (Berdahl & Martin 1984). Source: `sky.clear` (from memory). */
export const clearSkyEmittance = (dewPoint: number): number =>
  0.711 + 0.56 * (dewPoint / 100) + 0.73 * (dewPoint / 100) ** 2;

/** Sky temperature, °C, from air temperature °C and emittance. */
export const skyTemperature = (air: number, emittance: number): number => (air + 273.15) * emittance ** 0.25 - 273.15;

/** Undisturbed ground at a depth (m) and day of the year (Kusuda & Achenbach 1965). Diffusivity m²/day. Source: `ground.kusuda`. */
export function groundTemperature(
  soil: { mean: number; amplitude: number; coldestDay: number; diffusivity: number },
  depth: number,
  day: number,
): number {
  const damp = depth * Math.sqrt(Math.PI / (365 * soil.diffusivity));
  const lag = (depth / 2) * Math.sqrt(365 / (Math.PI * soil.diffusivity));
  return soil.mean - soil.amplitude * Math.exp(-damp) * Math.cos(((2 * Math.PI) / 365) * (day - soil.coldestDay - lag));
}
