import type { Recorder } from '../recorder.ts';

/** Exponent of a house's leaks where no test gave one. Source: `infiltration.exponent` (common practice). */
export const usualExponent = 0.65;

/** m³/(s Paⁿ) from air changes an hour at 50 Pa and the volume in m³. */
export function leakageCoefficient(airChanges50: number, volume: number, exponent: number, rec?: Recorder): number {
  const c = (airChanges50 * volume) / 3600 / 50 ** exponent;
  rec?.step(
    'c',
    'ACH50 * V / 3600 / 50 ^ n',
    { ACH50: airChanges50, V: volume, n: exponent },
    c,
    'm³/(s·Paⁿ)',
    'infiltration.blower-door',
  );
  return c;
}

/** Effective leakage area at 4 Pa, m². Source: `infiltration.blower-door` (ASTM E779 form). */
export const leakageArea = (coefficient: number, exponent: number, density: number): number =>
  coefficient * 4 ** exponent * Math.sqrt(density / (2 * 4));

/** Normalised leakage; areas m², height m. */
export const normalisedLeakage = (area: number, floorArea: number, height: number): number =>
  1000 * (area / floorArea) * (height / 2.5) ** 0.3;
