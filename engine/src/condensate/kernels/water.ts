import type { Recorder } from '../../physics/recorder.ts';

/** J/kg to make a kilogram of water from the air's vapour at a coil. Source: `condensate.latent`. */
export const latentHeat = 2.454e6;

/** kg/s of water that a coil takes out of `dryAir` kg/s between two humidity ratios, kg/kg; 0 where it takes none. */
export const waterFromAir = (dryAir: number, entering: number, leaving: number): number =>
  Math.max(0, dryAir * (entering - leaving));

/**
 * Litres an hour that a unit makes: `capacity` W in all, of it `sensible` as a share. Source: `condensate.latent`.
 */
export function litresAnHour(capacity: number, sensible: number, rec?: Recorder): number {
  const latent = capacity * (1 - sensible);
  const litres = (latent * 3600) / latentHeat;
  rec?.step('Q_latent', 'Q * (1 - share)', { Q: capacity, share: sensible }, latent, 'W', 'condensate.latent');
  rec?.step('water', 'Q_latent * 3600 / r', { Q_latent: latent, r: latentHeat }, litres, 'L/h', 'condensate.latent');
  return litres;
}
