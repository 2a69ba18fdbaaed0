import { type Project, resolveProject } from '@kneewall/project';
import { onlyParts } from '../plan/reads.ts';
import type { Trade } from '../plan/trade.ts';
import { design } from './design.ts';
import { findings } from './findings.ts';
import { materials } from './materials.ts';
import { words } from './messages.ts';
import { readings } from './readings.ts';
import { sources } from './sources.ts';
import { tasks } from './tasks.ts';
import { yearJob } from './yearJob.ts';

/** The year's job, and the file itself where the host hands it in. */
function looksUp(project: Project): readonly string[] {
  const blob = project.site?.weather?.blob;
  if (blob === undefined) return [];
  const job = yearJob(resolveProject(onlyParts(project, ['site'])).site);
  return [...(job ? [job.key] : []), `blob:${blob}`];
}

/** The weather the house meets: the cold night, the hot day, months and hours by temperature. */
export const climate: Trade<'climate'> = {
  id: 'climate',
  title: 'Climate',
  phase: 'before',
  reads: ['site'],
  after: [],
  looksUp,
  design,
  findings,
  materials,
  tasks,
  readings,
  words,
  sources,
  looksAt: { reads: ['site'], trades: [] },
};
