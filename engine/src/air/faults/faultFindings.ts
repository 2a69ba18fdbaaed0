import { inIdOrder } from '@kneewall/project';
import { scenario } from '../../plan/scenario.ts';
import type { PlanView } from '../../plan/trade.ts';
import { recordWorking } from '../../plan/working.ts';
import type { Found } from '../found.ts';
import type { AirResult } from '../result.ts';
import { type Fault, faultsOf } from './faultsOf.ts';

/** What is wrong with the ducts as drawn, each a finding that fails and is named by its place. */
export function faultFindings(result: AirResult, { project }: PlanView): Found[] {
  const { ducts } = project.routes;
  const s = scenario();
  const rooms = inIdOrder(project.house.rooms).filter(([, room]) => s.choice(room.conditioned) === 'yes');
  return faultsOf(ducts, result.model, rooms.length).map((fault) => faultFinding(fault, rooms.length));
}

function faultFinding({ kind, id, name }: Fault, rooms: number): Found {
  const { recorder, steps } = recordWorking();
  const full = id === '' ? kind : `${kind}:${id}`;
  recorder.step('N', 'table', {}, 1, '', 'air.network');
  return {
    draft: {
      id: full,
      subject: id === '' ? 'ducts' : id,
      holdPoint: 'order',
      consequence: 'money',
      kind: 'count',
      value: { ok: true, value: 1 },
      // One register is counted; of every other fault there may be none.
      limit: kind === 'one-register' ? { min: 2 } : { max: 0 },
      source: 'air.network',
      working: `air/${full}`,
      facts: { name, rooms },
    },
    working: steps,
  };
}
