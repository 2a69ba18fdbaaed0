import { btuPerWattHour, celsius, type UsRegion, usRegions } from './usClimate.ts';

/** W that a building needs at an outdoor temperature, °C; never below 0. */
export type LoadLine = (outdoor: number) => number;

/** °F at which the older method's building needs no heat. */
const noLoadOlder = 65;
const adequacy = 0.77;

/** W: the smallest and largest design heating requirement of a unit, by its capacity at 47 °F, W, and region. */
export function designRequirements(mild: number, region: UsRegion): { least: number; most: number } {
  const least = region === 'V' ? mild : (mild * (noLoadOlder - usRegions[region].design)) / 60;
  return { least: inSteps(least), most: inSteps((region === 'V' ? 2.2 : 2) * least) };
}

/** To the method's steps: 5,000 Btu/h up to 40,000, then 10,000. */
function inSteps(watts: number): number {
  const btu = watts * btuPerWattHour;
  const size = btu > 40_000 ? 10_000 : 5_000;
  return (Math.max(size, Math.round(btu / size) * size) || size) / btuPerWattHour;
}

/** The older building: nothing at 65 °F, 0.77 of the design requirement (W) at the region's design temperature. */
export const olderHeatingLoad = (requirement: number, region: UsRegion): LoadLine => {
  const [none, design] = [celsius(noLoadOlder), celsius(usRegions[region].design)];
  return (t) => Math.max(0, (adequacy * requirement * (none - t)) / (none - design));
};

/** The building since 2023: nothing at the region's own temperature, `slope` times the cooling capacity (W, 95 °F) at 5 °F. */
export const heatingLoadOfCooling = (cooling: number, slope: number, region: UsRegion): LoadLine => {
  const [none, cold] = [celsius(usRegions[region].noLoad), celsius(5)];
  return (t) => Math.max(0, (cooling * slope * (none - t)) / (none - cold));
};

/** Nothing at 65 °F, the rated cooling capacity over 1.1 at 95 °F; `share` 0.93 for variable speed since 2023, else 1. */
export const coolingLoad = (cooling: number, share: number): LoadLine => {
  const [none, hot] = [celsius(65), celsius(95)];
  return (t) => Math.max(0, ((t - none) / (hot - none)) * (cooling / 1.1) * share);
};
