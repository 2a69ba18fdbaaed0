import type { AgreedPoint } from '../../coupling/agreement.ts';
import type { ExpectedReading } from '../../plan/lines.ts';
import { attempt } from '../../plan/outcome.ts';
import { inTable, solveFlows } from '../flows.ts';
import { sideOf } from '../model.ts';
import type { AirResult } from '../result.ts';

/** Parts of its flow within which a register counts as set. Source: `air.balance`. */
const near = 0.1;

/** What every register should give once the dampers stand as found, at the air of today; nothing while they are not known. */
export function balancedReadings({ model, balance }: AirResult, point: AgreedPoint): ExpectedReading[] {
  if (!model.ok || !balance.ok || balance.value.set === undefined) return [];
  const { set } = balance.value;
  const at = { supplyTemperature: point.leaving, returnTemperature: point.entering };
  const flows = attempt(() => inTable(solveFlows(set, at), set));
  if (!flows.ok) return [];
  return set.terminals
    .filter((t) => sideOf(set, t.section) === 'supply')
    .map((t): ExpectedReading => {
      const expected = flows.value.terminals[t.id] ?? 0;
      return {
        id: `air/balanced:${t.id}`,
        trade: 'air',
        what: `Flow from “${t.name}” once the dampers are set`,
        how: 'The same bag or meter at every register, doors open, unit at full speed. Begin with the register that gets most of what it should, turn its damper, then the next; go round twice. Shares count here, not the sum: a bag that reads low reads low everywhere.',
        kind: 'flow',
        expected,
        good: { min: expected * (1 - near), max: expected * (1 + near) },
      };
    });
}
