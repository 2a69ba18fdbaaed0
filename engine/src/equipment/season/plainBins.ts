import { heatingSeason, partLoadFactor, type Season, type SeasonRow } from './season.ts';

/** A house and a unit as they meet at an outdoor temperature, °C: W, W, and heat for electricity. */
export type Meeting = {
  readonly load: (outdoor: number) => number;
  readonly capacity: (outdoor: number) => number;
  readonly cop: (outdoor: number, load: number) => number;
  /** The least it gives without stopping, W; the capacity itself where it has one speed. */
  readonly least: (outdoor: number) => number;
};

/**
 * A heating season over a year's hours by temperature: `bins` are °C and hours. Below the least it gives the unit
 * stops and starts; above its capacity resistance heat helps. Bins without load are left out.
 */
export function plainSeason(
  bins: readonly { readonly centre: number; readonly hours: number }[],
  at: Meeting,
  cyclic: number,
): Season {
  return heatingSeason(
    bins.flatMap(({ centre: outdoor, hours }): SeasonRow[] => {
      const load = at.load(outdoor);
      if (load <= 0) return [];
      const capacity = at.capacity(outdoor);
      const delivered = Math.min(load, capacity);
      const running = Math.min(1, load / at.least(outdoor));
      const factor = partLoadFactor(cyclic, running);
      const input = delivered / (at.cop(outdoor, delivered) * factor);
      return [{ outdoor, weight: hours, load, delivered, capacity, running, factor, input, backup: load - delivered }];
    }),
  );
}

/** °C at which capacity just meets the load, by halving between two temperatures that lie on either side of it. */
export function meetingPoint(spare: (outdoor: number) => number, short: number, enough: number): number {
  let [low, high] = [short, enough];
  for (let i = 0; i < 50; i++) {
    const middle = (low + high) / 2;
    if (spare(middle) < 0) low = middle;
    else high = middle;
  }
  return high;
}
