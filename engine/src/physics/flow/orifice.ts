/** Discharge of a sharp opening. Source: `flow.orifice`. */
export const dischargeCoefficient = 0.6;

/** m³/s through an opening (m²) at a pressure difference (Pa). */
export const orificeFlow = (area: number, pressure: number, density: number): number =>
  dischargeCoefficient * area * Math.sqrt((2 * pressure) / density);

/** Pa across an opening at a flow. */
export const orificePressure = (area: number, flow: number, density: number): number =>
  (density / 2) * (flow / (dischargeCoefficient * area)) ** 2;

/** Leakage of duct walls, m³/s per m², by class (cfm per 100 ft² at 1 inH2O) and pressure in Pa. Source: `flow.leakage-class`. */
export const leakagePerArea = (leakageClass: number, pressure: number): number =>
  ((leakageClass * 0.47194745e-3) / 9.290304) * (pressure / 249.08891) ** 0.65;
