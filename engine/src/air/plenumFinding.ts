import { scenario } from '../plan/scenario.ts';
import type { PlanView } from '../plan/trade.ts';
import { recordWorking } from '../plan/working.ts';
import type { Found } from './found.ts';

/** m from the unit's outlet to the first take-off (18 in). Source: `air.plenum` (common practice). */
const plenumLeast = 0.4572;

/** Whether the supply plenum is long enough before its first take-off, where that was measured. */
export function plenumFinding({ project }: PlanView): Found[] {
  const value = scenario().maybe(project.routes.ducts.handler.plenum);
  if (value === undefined) return [];
  const { recorder, steps } = recordWorking();
  recorder.step('L', 'table', {}, value, 'm', 'air.plenum');
  return [
    {
      draft: {
        id: 'plenum',
        subject: 'ducts',
        holdPoint: 'cut',
        consequence: 'comfort',
        kind: 'length',
        value: { ok: true, value },
        limit: { min: plenumLeast },
        source: 'air.plenum',
        working: 'air/plenum',
      },
      working: steps,
    },
  ];
}
