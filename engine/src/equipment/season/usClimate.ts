/** °C of a temperature in °F, the unit the US method is written in. */
export const celsius = (fahrenheit: number): number => ((fahrenheit - 32) * 5) / 9;

/** Btu/h in a watt as the US method rounds it. */
export const btuPerWattHour = 3.413;

export type UsRegion = 'I' | 'II' | 'III' | 'IV' | 'V' | 'VI';
export type SeasonBin = { readonly outdoor: number; readonly share: number };

/** Warmest heating bin, °F, and the step to the next. */
const warmest = 62;
const step = 5;

/** Thousandths of a region's heating hours by bin, from 62 °F down. Source: `equipment.us-season`. */
const thousandths: Readonly<Record<UsRegion, readonly number[]>> = {
  I: [291, 239, 194, 129, 81, 41, 19, 5, 1],
  II: [215, 189, 163, 143, 112, 88, 56, 24, 8, 2],
  III: [153, 142, 138, 137, 135, 118, 92, 47, 21, 9, 5, 2, 1],
  IV: [132, 111, 103, 93, 100, 109, 126, 87, 55, 36, 26, 13, 6, 2, 1],
  V: [106, 92, 86, 76, 78, 87, 102, 94, 74, 55, 47, 38, 29, 18, 10, 5, 2, 1],
  VI: [113, 206, 215, 204, 141, 76, 34, 8, 3],
};

/** Thousandths of the cooling hours by bin, from 67 °F up. Source: `equipment.us-season`. */
const coolingThousandths = [214, 231, 216, 161, 104, 52, 18, 4] as const;

/** The heating hours of one of the six regions by outdoor temperature, warmest first; shares sum to 1. */
export const usHeatingBins = (region: UsRegion): readonly SeasonBin[] =>
  thousandths[region].map((n, i) => ({ outdoor: celsius(warmest - i * step), share: n / 1000 }));

export const usCoolingBins: readonly SeasonBin[] = coolingThousandths.map((n, i) => ({
  outdoor: celsius(67 + i * step),
  share: n / 1000,
}));

/** °F: design temperature, temperature of no load; slopes of the load line for units of variable and of other speed. */
type RegionFacts = {
  readonly design: number;
  readonly noLoad: number;
  readonly slope: number;
  readonly slopeVariable: number;
};
export const usRegions: Readonly<Record<UsRegion, RegionFacts>> = {
  I: { design: 37, noLoad: 58, slope: 1.1, slopeVariable: 1.03 },
  II: { design: 27, noLoad: 57, slope: 1.06, slopeVariable: 0.99 },
  III: { design: 17, noLoad: 56, slope: 1.3, slopeVariable: 1.21 },
  IV: { design: 5, noLoad: 55, slope: 1.15, slopeVariable: 1.07 },
  V: { design: -10, noLoad: 55, slope: 1.16, slopeVariable: 1.08 },
  VI: { design: 30, noLoad: 57, slope: 1.11, slopeVariable: 1.03 },
};
