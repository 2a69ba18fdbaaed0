// ASHRAE Fundamentals, basic model (Sherman & Grimsrud form); coefficients from memory. (L/s)² per cm⁴ and K or (m/s)².
const stackCoefficient = [0.000145, 0.00029, 0.000435] as const;
const windCoefficient = [
  [0.000319, 0.00042, 0.000494],
  [0.000246, 0.000325, 0.000382],
  [0.000174, 0.000231, 0.000271],
  [0.000104, 0.000137, 0.000161],
  [0.000032, 0.000042, 0.000049],
] as const;

/** m³/s from the effective leakage area (cm² at 4 Pa), K and m/s at the station. Source: `infiltration.basic`. */
export function leakageFlowBasic(
  area: number,
  storeys: 1 | 2 | 3,
  shelter: 1 | 2 | 3 | 4 | 5,
  temperatureDifference: number,
  windSpeed: number,
): number {
  const cs = stackCoefficient[storeys - 1] ?? 0;
  const cw = (windCoefficient[shelter - 1] ?? windCoefficient[4])[storeys - 1] ?? 0;
  return (area / 1000) * Math.sqrt(cs * Math.abs(temperatureDifference) + cw * windSpeed ** 2);
}
