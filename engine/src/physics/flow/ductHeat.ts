/** J/(kg K). Source: `flow.air-heat`. */
export const heatOfAir = 1006;

/**
 * Share of the temperature difference to the surroundings that air keeps along a run: exp(-A / (R m cp)).
 * Inner surface m², insulation m²K/W, kg/s. No flow keeps nothing. Source: `flow.duct-heat`.
 */
export const keptShare = (surface: number, insulation: number, massFlow: number): number =>
  massFlow <= 0 ? 0 : Math.exp(-surface / (insulation * massFlow * heatOfAir));

/** Temperature at a run's end, °C. */
export const outletTemperature = (inlet: number, around: number, kept: number): number =>
  around + (inlet - around) * kept;
