/** W/m² on the module, °C and m/s of the air round it. */
export type ModuleWeather = { readonly light: number; readonly air: number; readonly wind: number };

/** How a module sheds heat: exponents of the array model, and K from its back to its cells at 1000 W/m². */
export type Mounting = { readonly a: number; readonly b: number; readonly difference: number };

/** Glass on both sides in an open rack; and laid close to a roof. Source: `power.cell-exponential`. */
export const mountings = {
  rack: { a: -3.47, b: -0.0594, difference: 3 },
  roof: { a: -2.98, b: -0.0471, difference: 1 },
} as const satisfies Readonly<Record<string, Mounting>>;

/** °C of the cells, by the exponential array model. Source: `power.cell-exponential`. */
export const cellExponential = (at: ModuleWeather, { a, b, difference }: Mounting): number =>
  at.light * Math.exp(a + b * at.wind) + at.air + (at.light / 1000) * difference;

/** °C of the cells, by losses that grow in a line with the wind, W/(m²K) and W/(m²K) per m/s. Source: `power.cell-linear`. */
export const cellLinear = (at: ModuleWeather, still: number, byWind: number): number =>
  at.air + at.light / (still + byWind * at.wind);

/** The same with the share of the light taken up and the share that leaves as electricity. Source: `power.cell-linear`. */
export const cellAbsorbing = (
  at: ModuleWeather,
  still: number,
  byWind: number,
  { absorbed, efficiency }: { readonly absorbed: number; readonly efficiency: number },
): number => at.air + (at.light * absorbed * (1 - efficiency)) / (still + byWind * at.wind);

/** °C of the cells from their nominal temperature at 800 W/m² and 20 °C. Source: `power.cell-nominal`. */
export const cellNominal = (at: Pick<ModuleWeather, 'light' | 'air'>, nominal: number): number =>
  at.air + ((nominal - 20) / 800) * at.light;
