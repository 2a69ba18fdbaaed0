import type { Candidate, EquipmentResult } from '../equipment/result.ts';
import { required, unresolved } from '../plan/outcome.ts';
import type { AirFlows } from './ductwork.ts';
import type { Ducts } from './model.ts';

/** The chosen unit, where there are ducts for it to blow into. Ends the enclosing attempt where something is missing. */
export function unitBehind(ducts: Ducts, equipment: EquipmentResult): Candidate {
  if (Object.keys(ducts.sections).length === 0) return unresolved('missing', 'routes.ducts.sections');
  if (Object.keys(ducts.terminals).length === 0) return unresolved('missing', 'routes.ducts.terminals');
  return equipment.candidates[required(equipment.chosen)] ?? unresolved('missing', 'candidates');
}

/** What the unit's sheet wants, m³/s: the largest airflow it states; else what flows. */
export function wantedFlow(unit: Candidate, flows: AirFlows): number {
  const stated = unit.unit.rows.flatMap((r) => (r.airflow === undefined ? [] : [r.airflow]));
  return stated.length > 0 ? Math.max(...stated) : flows.flow;
}
