import type { Drafts, PlanView } from '../plan/trade.ts';
import { betweenFindings } from './betweenFindings.ts';
import { codeFinding } from './codeFinding.ts';
import { noUnit } from './noUnit.ts';
import type { CircuitResult } from './result.ts';
import { runFindings } from './runFindings.ts';
import { supplyFindings } from './supplyFindings.ts';

/** What stands against wires and supply, for the unit that the plan is made for. */
export function findings(result: CircuitResult, view: PlanView): Drafts {
  if (result.runs.length === 0) return { drafts: [noUnit(result)], workings: {} };
  const between = betweenFindings(result, view);
  const code = codeFinding(view);
  return {
    drafts: [
      ...supplyFindings(result, view),
      ...result.runs.flatMap((run) => runFindings(run, view)),
      ...between.drafts,
      code.draft,
    ],
    workings: { ...between.workings, [code.draft.working]: code.working },
  };
}
