/** Discharge of a sharp opening. Source: `flow.orifice`. */
export const dischargeCoefficient = 0.6;

/** Flow through a sharp opening, m³/s: area m², pressure across it Pa (positive), air's density kg/m³. Source: `flow.orifice`. */
export const orificeFlow = (area: number, pressure: number, density: number): number =>
  dischargeCoefficient * area * Math.sqrt((2 * pressure) / density);

/** Opening that lets a flow through at a pressure, m²; m³/s, Pa above zero, kg/m³. Source: `flow.orifice`. */
export const orificeArea = (flow: number, pressure: number, density: number): number =>
  flow / (dischargeCoefficient * Math.sqrt((2 * pressure) / density));

/** One opening as good as two behind each other, m²: their resistances add. Nothing open in either gives 0. Source: `flow.orifice`. */
export const orificesInSeries = (first: number, second: number): number =>
  first > 0 && second > 0 ? 1 / Math.sqrt(1 / first ** 2 + 1 / second ** 2) : 0;
