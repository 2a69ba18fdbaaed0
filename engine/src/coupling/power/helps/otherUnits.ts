import { inIdOrder, type Range, type ResolvedProject } from '@kneewall/project';
import type { AirResult } from '../../../air/result.ts';
import type { Candidate } from '../../../equipment/result.ts';
import { attempt } from '../../../plan/outcome.ts';
import { scenario } from '../../../plan/scenario.ts';
import { standingDraw } from '../../season/standingDraw.ts';
import { ductsInputs, unitInputs } from '../../season/unitInputs.ts';
import type { PowerYearInputs } from '../powerYearJob.ts';
import type { OtherUnit } from './helpsJob.ts';

/** Every candidate but the chosen one, behind the same ducts; one whose sheet lacks something is left out. */
export function otherUnits(
  project: ResolvedProject,
  chosen: Candidate,
  candidates: Readonly<Record<string, Candidate>>,
  { house }: PowerYearInputs,
  air: Pick<AirResult, 'model' | 'flows'>,
): OtherUnit[] {
  return inIdOrder(candidates).flatMap(([id, candidate]) => {
    if (id === chosen.id) return [];
    const other = attempt((): OtherUnit => {
      const ducts = ductsInputs(air, candidate);
      const dearer = priceBeyond(project, id, chosen.id);
      return {
        id,
        unit: unitInputs(candidate.unit, project.candidates[id], house, ducts.flows.flow, scenario()),
        standing: standingDraw(project, id),
        speeds: ducts.speeds,
        ...(ducts.coil ? { coil: ducts.coil } : {}),
        ...(dearer ? { dearer } : {}),
      };
    });
    return other.ok ? [other.value] : [];
  });
}

/** What one costs more than the other; low and high as far apart as both prices allow. */
function priceBeyond(project: ResolvedProject, id: string, than: string): Range | undefined {
  const [a, b] = [project.candidates[id]?.price, project.candidates[than]?.price];
  if (!a || !b || 'missing' in a || 'missing' in b) return undefined;
  return { low: a.low - b.high, likely: a.likely - b.likely, high: a.high - b.low };
}
