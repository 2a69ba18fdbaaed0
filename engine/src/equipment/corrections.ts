import type { Given } from '@kneewall/project';
import { type Scenario, scenario } from '../plan/scenario.ts';
import { slopeOf } from './coil/fit.ts';
import type { UnitModel } from './result.ts';

/** Share of the missing air density that a unit's capacity loses. Source: `equipment.altitude`. */
const altitudeGiven: Given = {
  path: 'site.elevation#capacity',
  kind: 'fraction',
  known: 'assumed',
  low: 0.2,
  likely: 0.5,
  high: 0.9,
};

/** Capacity lost to frost at 35 °F. Source: `equipment.defrost`. */
const frostGiven: Given = {
  path: 'candidates#frost',
  kind: 'fraction',
  known: 'assumed',
  low: 0.04,
  likely: 0.1,
  high: 0.16,
};

/** Capacity a compressor gains for each K its coil is warmer, where the sheet does not tell. Source: `equipment.coil-slope`. */
const slopeGiven: Given = {
  path: 'candidates#coil-slope',
  kind: 'fraction',
  known: 'assumed',
  low: 0.015,
  likely: 0.03,
  high: 0.045,
};

/** Sensible share where the sheet states none. Source: `equipment.sensible-share`. */
const sensibleGiven: Given = {
  path: 'candidates#sensible-share',
  kind: 'fraction',
  known: 'assumed',
  low: 0.65,
  likely: 0.75,
  high: 0.85,
};

/** What a data sheet leaves to be corrected in heating. */
export type HeatingCorrections = { readonly altitudeShare: number; readonly frostLoss: number };

/** And in cooling. */
export type Corrections = HeatingCorrections & {
  readonly coilSlope: number;
  readonly sensibleShare: number;
};

export const heatingCorrections = (s: Scenario): HeatingCorrections => ({
  altitudeShare: s.of(altitudeGiven),
  frostLoss: s.of(frostGiven),
});

/** The corrections of a reading of the project; the unit's own sheet tells what it can. */
export function correctionsOf(unit: UnitModel, s: Scenario): Corrections {
  const fitted = slopeOf(unit.rows);
  const slope: Given = fitted ? { ...slopeGiven, ...fitted, known: 'nameplate' } : slopeGiven;
  return {
    ...heatingCorrections(s),
    coilSlope: s.of(slope),
    sensibleShare: s.of(sensibleGiven),
  };
}

/** The likely ones. */
export const usualCorrections = (unit: UnitModel): Corrections => correctionsOf(unit, scenario());
