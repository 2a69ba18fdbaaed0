import { type EuropeanClimate, europeanBins, europeanDesign } from './europeClimate.ts';
import { heatingSeason, partLoadFactor, type Season, type SeasonRow } from './season.ts';

/** A unit at one outdoor temperature, °C: W at highest and lowest speed, and its coefficient of performance. */
export type EuropeanPoint = {
  readonly outdoor: number;
  readonly most: number;
  readonly least: number;
  readonly cop: number;
};

/** °C above which the European building needs no heat. */
const noLoad = 16;

/**
 * A heating season by the European bin method, air to air. Straight lines between the points and, as the method has
 * it, along the last two beyond their ends; points rise in temperature, at least two. `design` is the load in W at the
 * climate's design temperature. Resistance heat takes what the highest speed cannot. Source: `equipment.europe-season`.
 */
export function europeanSeason(
  points: readonly EuropeanPoint[],
  climate: EuropeanClimate,
  design: number,
  cyclic: number,
): Season {
  return heatingSeason(
    europeanBins(climate).map(({ outdoor, hours }): SeasonRow => {
      const load = (design * (outdoor - noLoad)) / (europeanDesign[climate] - noLoad);
      const at = pointAt(points, outdoor);
      const running = Math.min(1, load / at.least);
      const factor = partLoadFactor(cyclic, running);
      const backup = Math.max(0, load - at.most);
      const delivered = load - backup;
      const input = delivered / (at.cop * factor);
      return { outdoor, weight: hours, load, delivered, capacity: at.most, running, factor, input, backup };
    }),
  );
}

/** The unit at a temperature, straight between its neighbours. */
export function pointAt(points: readonly EuropeanPoint[], outdoor: number): EuropeanPoint {
  const found = points.findIndex((p) => p.outdoor >= outdoor);
  const above = Math.max(1, found < 0 ? points.length - 1 : found);
  const [a, b] = [points[above - 1], points[above]];
  if (!a || !b) throw new Error('assert: a European season needs two points');
  const share = (outdoor - a.outdoor) / (b.outdoor - a.outdoor);
  const along = (x: number, y: number): number => x + share * (y - x);
  return { outdoor, most: along(a.most, b.most), least: along(a.least, b.least), cop: along(a.cop, b.cop) };
}
