import type { ExpectedUnit } from '../../commissioning/logs/logHours.ts';
import type { PlannedUnit } from '../../commissioning/logs/logJob.ts';
import { usualCorrections } from '../../equipment/corrections.ts';
import { outputFor, powerFor, type UnitMoment, unitMoments } from '../season/unitPower.ts';

/**
 * The unit as the plan's own year has it: its sheet with thin air, frost and what starting costs, and its standing draw.
 * Heat beyond its most is taken as resistance, so that cold hours stay comparable. Not a number gives not a number.
 */
export function expectedUnit({ model, pressure, standby }: PlannedUnit): ExpectedUnit {
  const momentOf = unitMoments(model, 'heating', pressure, usualCorrections(model));
  const most = (unit: UnitMoment) => unit.at(-1) ?? { capacity: 0, power: 0 };
  return {
    power: (outdoor, heat) => {
      const unit = momentOf(outdoor);
      return standby + powerFor(unit, heat) + Math.max(0, heat - most(unit).capacity);
    },
    heat: (outdoor, drawn) => {
      const unit = momentOf(outdoor);
      const power = drawn - standby;
      return outputFor(unit, power) + Math.max(0, power - most(unit).power);
    },
  };
}
