import type { ResolvedProject } from '@kneewall/project';
import { type Paper, type PaperKind, type Question, type QuestionId, questionIds, type WorkRow } from './result.ts';

/** What is usually asked, and which of it a paper answers already. Local authority decides; common practice, no source. */
export function questionsOf(project: ResolvedProject, papers: readonly Paper[], works: readonly WorkRow[]): Question[] {
  const some = (kind: PaperKind): boolean => papers.some((p) => p.kind === kind && p.status !== 'open');
  const known = (work: WorkRow['work']): boolean => {
    const row = works.find((w) => w.work === work);
    return row !== undefined && (row.wanted.length > 0 || row.free.length > 0);
  };
  const answered: Readonly<Record<QuestionId, boolean>> = {
    permit: some('permit'),
    inspections: some('inspection'),
    'owner-work': known('electrical') && known('refrigerant'),
    refrigerant: known('refrigerant'),
    electrical: known('electrical'),
    utility: false,
    noise: false,
    'old-materials': false,
    flue: known('gas'),
    insurer: some('insurance'),
    warranty: some('warranty'),
    incentive: some('incentive'),
  };
  return questionIds
    .filter((id) => id !== 'flue' || works.some((w) => w.work === 'gas'))
    .filter((id) => id !== 'utility' || !('choice' in project.power.supply) || project.power.supply.choice === 'grid')
    .map((id) => ({ id, open: !answered[id] }));
}
