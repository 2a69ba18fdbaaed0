/** Litres an hour at no load for each rated kW, and litres for each kWh given. */
export type FuelLine = { readonly idle: number; readonly perEnergy: number };

/** Diesel as in Skarstein & Uhlen 1989; petrol and propane by common practice. Source: `power.fuel`. */
export const fuelLines = {
  diesel: { idle: 0.08145, perEnergy: 0.246 },
  petrol: { idle: 0.15, perEnergy: 0.36 },
  propane: { idle: 0.19, perEnergy: 0.5 },
} as const satisfies Readonly<Record<string, FuelLine>>;

/** Litres an hour of a set of so many rated kW that gives so many kW. */
export const fuelRate = (line: FuelLine, rated: number, given: number): number =>
  line.idle * rated + line.perEnergy * given;

/** The straight line nearest to points of kW and L/h, in L/h at no load and L/kWh. Two different points at least. */
export function lineThrough(points: readonly (readonly [number, number])[]): {
  readonly at0: number;
  readonly slope: number;
} {
  const n = points.length;
  const mean = (of: 0 | 1): number => points.reduce((a, p) => a + p[of], 0) / n;
  const [x, y] = [mean(0), mean(1)];
  const slope =
    points.reduce((a, p) => a + (p[0] - x) * (p[1] - y), 0) / points.reduce((a, p) => a + (p[0] - x) ** 2, 0);
  return { at0: y - slope * x, slope };
}

/** °C in which an engine is taken to stand: it runs in the cold half of the year. */
export const engineAir = 25;

/**
 * What a naturally aspirated engine keeps of its rated power: 3.5 % less for each 300 m above 300 m, 1 % less for each
 * 5.5 K above 25 °C. `elevation` m, `air` °C. Never below 0. Source: `power.engine-air`.
 */
export function generatorKeeps(elevation: number, air: number): number {
  const thin = (0.035 * Math.max(0, elevation - 300)) / 300;
  const hot = (0.01 * Math.max(0, air - 25)) / 5.5;
  return Math.max(0, 1 - thin - hot);
}
