import { type Project, resolveProject } from '@kneewall/project';
import { onlyParts } from '../plan/reads.ts';
import type { Finder } from '../plan/trade.ts';
import { design } from './design.ts';
import { findings } from './findings.ts';
import { yearJob } from './yearJob.ts';

/** The year's job, and the file itself where the host hands it in. */
function looksUp(project: Project): readonly string[] {
  const blob = project.site?.weather?.blob;
  if (blob === undefined) return [];
  const job = yearJob(resolveProject(onlyParts(project, ['site'])).site);
  return [...(job ? [job.key] : []), `blob:${blob}`];
}

/** The weather the house meets: the cold night, the hot day, months and hours by temperature. */
export const climateFinder: Finder<'climate'> = {
  id: 'climate',
  phase: 'before',
  reads: ['site'],
  after: [],
  looksUp,
  design,
  findings,
  looksAt: { reads: ['site'], trades: [] },
};
