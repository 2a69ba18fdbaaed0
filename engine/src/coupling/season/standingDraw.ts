import type { ResolvedProject } from '@kneewall/project';
import { unresolved } from '../../plan/outcome.ts';
import { scenario } from '../../plan/scenario.ts';
import type { StandingDraw } from '../power/powerYearJob.ts';

/** W that a candidate draws beside compressor and fan. Ends the enclosing attempt where there is no such candidate. */
export function standingDraw(project: ResolvedProject, id: string): StandingDraw {
  const s = scenario();
  const { electrics } = project.candidates[id] ?? unresolved('missing', `candidates.${id}`);
  return {
    standby: s.of(electrics.standby),
    crankcase: s.of(electrics.crankcase),
    panHeater: s.of(electrics.panHeater),
  };
}
