/** W/(m² K⁴) */
export const stefanBoltzmann = 5.670374e-8;

/** Emittance of a clear sky from the dew point, °C (Berdahl & Martin 1984). Source: `sky.clear` (from memory). */
export const clearSkyEmittance = (dewPoint: number): number =>
  0.711 + 0.56 * (dewPoint / 100) + 0.73 * (dewPoint / 100) ** 2;

/** The same by Clark & Allen 1978. Source: `sky.clark-allen` (from memory). */
export const clarkAllenEmittance = (dewPoint: number): number => 0.787 + 0.764 * Math.log((dewPoint + 273.15) / 273);

/** What cloud multiplies a clear sky's emittance by, cover 0 to 1 (Clark & Allen 1978). Source: `sky.clark-allen`. */
export function cloudFactor(cover: number): number {
  const n = 10 * Math.max(0, Math.min(1, cover));
  return 1 + n * (0.0224 + n * (-0.0035 + 0.00028 * n));
}

/**
 * Cover by cloud, 0 to 1, from the diffuse share of the light on the level, 0 to 1 (Kasten & Czeplak 1980: a clear sky
 * gives 0.3 of it, a covered one all). Not for a sun close to the horizon. Source: `sky.cloud-of-diffuse` (from memory).
 */
export const cloudOfDiffuse = (share: number): number => Math.sqrt(Math.max(0, Math.min(1, (share - 0.3) / 0.7)));

/** Sky temperature, °C, from air temperature °C alone, clear sky (Swinbank 1963). Source: `sky.swinbank` (from memory). */
export const swinbankTemperature = (air: number): number => 0.0552 * (air + 273.15) ** 1.5 - 273.15;

/** Heat radiated down by a sky, W/m², from air temperature °C and emittance. */
export const skyRadiation = (air: number, emittance: number): number =>
  stefanBoltzmann * emittance * (air + 273.15) ** 4;

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
