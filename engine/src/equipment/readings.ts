import type { Conditions, ExpectedReading } from '../plan/lines.ts';
import type { PlanView } from '../plan/trade.ts';
import type { EquipmentResult } from './result.ts';

/** Supply air above or below return air at full speed, as the agreed state has it for these very conditions: never a fixed figure. */
export function readings(_result: EquipmentResult, conditions: Conditions, view: PlanView): readonly ExpectedReading[] {
  const point = view.agreement[conditions.mode];
  if (!point || !view.agreement.converged) return [];
  const expected = Math.abs(point.leaving - point.entering);
  return [
    {
      id: `equipment/split-${conditions.mode}`,
      trade: 'equipment',
      what:
        conditions.mode === 'heating'
          ? 'Supply air above return air, unit at full speed'
          : 'Supply air below return air, unit at full speed',
      how: 'Two thermometers, one in the return box and one in the supply plenum out of sight of the coil; after 15 minutes at full speed, not in defrost.',
      kind: 'temperature-difference',
      expected,
      good: { min: expected * 0.8, max: expected * 1.25 },
    },
  ];
}
