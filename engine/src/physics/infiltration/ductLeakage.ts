/** Exponent of the leaks of ducts. Source: `leakage.class` (SMACNA and ASHRAE leakage classes). */
export const ductLeakExponent = 0.65;

const inchWater = 249.08891;
const cubicFoot = 0.3048 ** 3;
const squareFoot = 0.3048 ** 2;

/**
 * What a square metre of duct wall leaks, m³/(s m²): leakage class (cfm of 100 ft² at 1 inH2O) and pressure in it, Pa, not
 * below zero. Source: `leakage.class`.
 */
export const leakageOfClass = (leakageClass: number, pressure: number): number =>
  ((leakageClass * cubicFoot) / 60 / (100 * squareFoot)) * (pressure / inchWater) ** ductLeakExponent;

/** A leak seen at one pressure as it would be at another, m³/s; Pa above zero. Source: `leakage.class`. */
export const leakAt = (flow: number, pressure: number, other: number): number =>
  flow * (other / pressure) ** ductLeakExponent;
