/** Discharge of a sharp opening. Source: `flow.orifice`. */
export const dischargeCoefficient = 0.6;
