import { gasConstant } from './moistAir.ts';

/** Standard pressure at a height above the sea, m in, Pa out, -5000 to 11000 m. Source: `moist-air.atmosphere`. */
export const standardPressure = (elevation: number): number => 101_325 * (1 - 2.25577e-5 * elevation) ** 5.2559;

/** kg/m³ of dry air at °C and Pa. */
export const airDensity = (t: number, pressure: number): number => pressure / (gasConstant * (t + 273.15));

/** Dynamic viscosity of air, Pa s, by Sutherland's law (from memory: 1.716e-5 at 273.15 K, constant 110.4 K). */
export const airViscosity = (t: number): number => {
  const tK = t + 273.15;
  return (1.716e-5 * (tK / 273.15) ** 1.5 * (273.15 + 110.4)) / (tK + 110.4);
};
