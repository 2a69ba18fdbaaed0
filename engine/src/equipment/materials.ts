import type { MaterialLine } from '../plan/lines.ts';
import type { EquipmentResult } from './result.ts';

/** The unit itself and what it stands on. */
export function materials({ chosen, candidates }: EquipmentResult): readonly MaterialLine[] {
  if (!chosen.ok) return [];
  const unit = candidates[chosen.value];
  const line = (id: string, what: string, amount: number): MaterialLine => ({
    id: `equipment/${id}`,
    trade: 'equipment',
    what,
    kind: 'count',
    amount,
    soldBy: 1,
    for: `candidates.${chosen.value}`,
  });
  return [
    line('unit', `Heat pump, indoor and outdoor part: ${unit?.name ?? chosen.value}`, 1),
    line('isolators', 'Vibration pads or hangers for the air handler', 4),
    line('outdoor-feet', 'Feet or pads between the outdoor unit and its stand', 4),
    line('thermostat', 'Thermostat or wall control that suits the unit', 1),
  ];
}
