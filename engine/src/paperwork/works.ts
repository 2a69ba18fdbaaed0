import type { ResolvedProject } from '@kneewall/project';
import { type LicensedWork, licensedWorks, type Paper, type WorkRow } from './result.ts';

const ofLaw: readonly Paper['kind'][] = ['permit', 'inspection', 'insurance'];
export type Hands = Partial<Record<LicensedWork, 'us' | 'licensed'>>;

/** Who is to do which work; nothing where nobody has chosen. */
export function handsOf({ work }: ResolvedProject): Hands {
  return Object.fromEntries(
    licensedWorks.flatMap((w) => {
      const said = work.hands[w];
      return 'choice' in said ? [[w, said.choice]] : [];
    }),
  );
}

/** The works of this job: gas and flues only where something burns on a flue, or a paper speaks of it. */
export function worksOf(project: ResolvedProject, papers: readonly Paper[], hands: Hands): WorkRow[] {
  const gas =
    hands.gas !== undefined ||
    project.house.flue === true ||
    papers.some((p) => p.works.includes('gas') && p.works.length < licensedWorks.length);
  return licensedWorks
    .filter((w) => w !== 'gas' || gas)
    .map((work): WorkRow => {
      const law = papers.filter((p) => ofLaw.includes(p.kind));
      const ids = (those: readonly Paper[]): string[] => those.map((p) => p.id);
      return {
        work,
        ...(hands[work] ? { hands: hands[work] } : {}),
        wanted: ids(law.filter((p) => p.works.includes(work))),
        free: ids(law.filter((p) => p.licence === 'no' || (p.licence === 'yes' && !p.works.includes(work)))),
        silent: ids(law.filter((p) => p.licence === 'unknown')),
      };
    });
}
