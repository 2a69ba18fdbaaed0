import type { Given } from '@kneewall/project';
import type { Scenario } from '../plan/scenario.ts';
import type { WorkingRecorder } from '../plan/working.ts';
import { heatingCorrections } from './corrections.ts';
import type { UnitModel } from './result.ts';
import { heatingAt } from './unitAt.ts';

/** Highest heating capacity on the cold night, W, and its coefficient of performance; defrost and altitude counted. */
export function heatingOutput(
  unit: UnitModel,
  night: Given,
  pressure: number,
  s: Scenario,
  rec?: WorkingRecorder,
): { capacity: number; cop: number } {
  const outdoor = s.of(night);
  const { altitudeShare, frostLoss } = heatingCorrections(s);
  const at = { outdoor, pressure, speed: 'most' as const };
  const { capacity, power, sheet, thin, loss } = heatingAt(unit, at, { altitudeShare, frostLoss });
  if (rec) {
    rec.given('t_out', night);
    rec.step('Q_sheet', 'table', { t_out: outdoor }, sheet, 'W', 'equipment.sheet');
    rec.step(
      'f_altitude',
      '1 - s * (1 - p / 101325)',
      { s: altitudeShare, p: pressure },
      thin,
      '',
      'equipment.altitude',
    );
    rec.step('loss', 'table', { t_out: outdoor }, loss, '', 'equipment.defrost');
    rec.step(
      'Q',
      'Q_sheet * f_altitude * (1 - loss)',
      { Q_sheet: sheet, f_altitude: thin, loss },
      capacity,
      'W',
      'equipment.sheet',
    );
  }
  return { capacity, cop: capacity / power };
}
