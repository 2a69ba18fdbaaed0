import type { Draft } from '../plan/judge.ts';
import { attempt, unresolved } from '../plan/outcome.ts';
import type { PlanView } from '../plan/trade.ts';
import { recordWorking } from '../plan/working.ts';

/** Whether anybody has asked which code, of which edition, decides here. */
export function codeFinding(view: PlanView): {
  readonly draft: Draft;
  readonly working: ReturnType<typeof recordWorking>['steps'];
} {
  const { code } = view.project.routes.wires;
  const { recorder, steps } = recordWorking();
  const value = attempt(() => {
    if (code === undefined || code.trim() === '') return unresolved('missing', 'routes.wires.code');
    recorder.step('named', 'table', {}, 1, '', 'circuit.code');
    return 1;
  });
  return {
    draft: {
      id: 'code',
      subject: 'supply',
      holdPoint: 'decide',
      consequence: 'money',
      kind: 'count',
      value,
      limit: { min: 1 },
      source: 'circuit.code',
      working: 'circuit/code',
      ...(code === undefined ? {} : { facts: { code } }),
    },
    working: steps,
  };
}
