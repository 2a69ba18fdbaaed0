import { unresolved } from '../plan/outcome.ts';
import { type Found, telling } from '../plan/telling.ts';
import type { PlanView } from '../plan/trade.ts';

/** Whether anybody has asked which code, of which edition, decides here. */
export function codeFinding(view: PlanView): Found {
  const { code } = view.project.routes.wires;
  return telling('circuit', 'supply')(
    {
      id: 'code',
      holdPoint: 'decide',
      consequence: 'money',
      kind: 'count',
      limit: { min: 1 },
      source: 'circuit.code',
      ...(code === undefined ? {} : { facts: { code } }),
    },
    (recorder) => {
      if (code === undefined || code.trim() === '') return unresolved('missing', 'routes.wires.code');
      recorder.step('named', 'table', {}, 1, '', 'circuit.code');
      return 1;
    },
  );
}
