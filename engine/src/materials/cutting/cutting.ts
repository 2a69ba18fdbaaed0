import type { ResolvedProject } from '@kneewall/project';
import type { MaterialsResult } from '../result.ts';
import { cutJob } from './cutJob.ts';
import { inputsOf } from './inputsOf.ts';

/** The pieces asked for as a job; nothing is to be cut where no duct has its sizes or all are fitted. */
export function cutting(project: ResolvedProject): Pick<MaterialsResult, 'cut' | 'wanted'> {
  const inputs = inputsOf(project);
  const some =
    inputs.joints.some((j) => j.state === 'piece') ||
    [inputs.boxes, inputs.ducts, inputs.made, inputs.pipes, inputs.bags].some((x) => x.length > 0);
  if (!some) return { cut: { ok: false, because: 'missing', paths: ['routes.ducts.sections'] }, wanted: [] };
  const job = cutJob(inputs);
  return { cut: { ok: false, because: 'pending', paths: [job.key] }, wanted: [job] };
}
