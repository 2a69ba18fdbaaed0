import { coolingSeason, heatingSeason, partLoadFactor, type Season, type SeasonRow } from './season.ts';
import { btuPerWattHour, type SeasonBin } from './usClimate.ts';
import type { LoadLine } from './usLoad.ts';
import type { Unit } from './usUnits.ts';

/** °C at and below which the compressor stops, and above which it starts again. */
export type CutOut = { readonly off: number; readonly on: number };

/** 1 while it runs, 1/2 between stop and start, 0 below the stop or where resistance heat would be as good. */
const runsAt = (t: number, cop: number, cutOut: CutOut | undefined): number =>
  cop < 1 || (cutOut !== undefined && t <= cutOut.off) ? 0 : cutOut !== undefined && t <= cutOut.on ? 0.5 : 1;

/**
 * A heating season by the US bin method, single or variable speed: W and °C in, heat over electricity out (times
 * 3.413 in Btu/Wh). Bins without load are left out and the others keep their shares. Source: `equipment.us-season`.
 */
export function usHeatingSeason(unit: Unit, load: LoadLine, bins: readonly SeasonBin[], cutOut?: CutOut): Season {
  return heatingSeason(
    bins.flatMap(({ outdoor, share }): SeasonRow[] => {
      const needed = load(outdoor);
      if (needed <= 0) return [];
      const { delivered, input, running, factor, most } = unit(outdoor, needed);
      const runs = runsAt(outdoor, most.capacity / most.power, cutOut);
      return [
        {
          outdoor,
          weight: share,
          load: needed,
          delivered: delivered * runs,
          capacity: most.capacity,
          running,
          factor,
          input: input * runs,
          backup: needed - delivered * runs,
        },
      ];
    }),
  );
}

/** A cooling season by the US bin method for variable speed. Times 3.413 in Btu/Wh. Source: `equipment.us-season`. */
export function usCoolingSeason(unit: Unit, load: LoadLine, bins: readonly SeasonBin[]): Season {
  return coolingSeason(
    bins.map(({ outdoor, share }): SeasonRow => {
      const needed = load(outdoor);
      const { most, ...row } = unit(outdoor, needed);
      return { outdoor, weight: share, load: needed, capacity: most.capacity, ...row, backup: 0 };
    }),
  );
}

/** The cooling season of a single-speed unit, from its efficiency at 82 °F; in the unit of that. */
export const singleSpeedCooling = (efficiencyMild: number, cyclic: number): number =>
  partLoadFactor(cyclic, 0.5) * efficiencyMild;

/**
 * What a heating season gains where defrost comes on demand: 1.03 where it comes every hour and a half or more often,
 * down to 1 where it waits for `longest`, which counts as 12 h at most. Hours.
 */
export function defrostCredit(apart: number, longest: number): number {
  const most = Math.min(12, longest);
  const between = Math.max(1.5, Math.min(apart, most));
  return most <= 1.5 ? 1 : 1 + 0.03 * (1 - (between - 1.5) / (most - 1.5));
}

/** A seasonal ratio in Btu/Wh. */
export const inBtuPerWattHour = (ratio: number): number => ratio * btuPerWattHour;
