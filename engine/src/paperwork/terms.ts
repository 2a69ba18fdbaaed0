import type { ResolvedProject } from '@kneewall/project';
import { choiceOf } from './papers.ts';
import type { LicensedWork, Paper, Terms, YesNo } from './result.ts';
import type { Hands } from './works.ts';

const at = (id: string, field: string): string => `paperwork.${id}.${field}`;
const noHands = (work: LicensedWork): string => `work.hands.${work}`;

/** What one term comes to: kept, broken, or open until these fields are filled in. */
type Term = 'kept' | 'broken' | readonly string[];

/** A term that forbids the owner a kind of work. */
const reserved = (hands: Hands, work: LicensedWork): Term =>
  hands[work] === undefined ? [noHands(work)] : hands[work] === 'us' ? 'broken' : 'kept';

const gathered = (terms: Readonly<Record<string, Term>>): Terms => ({
  broken: Object.entries(terms).flatMap(([name, t]) => (t === 'broken' ? [name] : [])),
  open: [...new Set(Object.values(terms).flatMap((t) => (typeof t === 'string' ? [] : t)))],
});

/** A warranty against the plan of who does what. `ends`: how the refrigerant lines are closed. */
export function warrantyTerms(project: ResolvedProject, paper: Paper, hands: Hands): Terms {
  const entry = project.paperwork[paper.id];
  if (!entry) return { broken: [], open: [] };
  const { selfInstalled, joints, startUp } = entry.warranty;
  const ends = choiceOf(project.routes.lineset.ends, 'once');
  const works: readonly LicensedWork[] = ['refrigerant', 'electrical', 'startUp'];
  const own = works.map((w) => reserved(hands, w));
  const self = choiceOf(selfInstalled, 'unknown');
  const join = choiceOf(joints, 'unknown');
  const start = choiceOf(startUp, 'unknown');
  return gathered({
    'self-installed':
      self === 'unknown'
        ? [at(paper.id, 'warranty.selfInstalled')]
        : self === 'allowed' || own.every((t) => t === 'kept')
          ? 'kept'
          : own.includes('broken')
            ? 'broken'
            : own.flatMap((t) => (typeof t === 'string' ? [] : t)),
    joints:
      join === 'unknown'
        ? [at(paper.id, 'warranty.joints')]
        : join === 'any' || (join === 'once' && ends === 'once')
          ? 'kept'
          : reserved(hands, 'refrigerant'),
    'start-up':
      start === 'unknown'
        ? [at(paper.id, 'warranty.startUp')]
        : start === 'anyone'
          ? 'kept'
          : reserved(hands, 'startUp'),
    ...licenceTerms(paper, hands),
  });
}

/** An incentive against the unit that is chosen and who does what. */
export function incentiveTerms(
  project: ResolvedProject,
  paper: Paper,
  hands: Hands,
  unit: string | undefined,
): Terms & { readonly first: YesNo } {
  const entry = project.paperwork[paper.id];
  if (!entry) return { broken: [], open: [], first: 'unknown' };
  const asked = plainTier(entry.incentive.tier);
  const id = entry.unit ?? unit;
  const has = id === undefined ? '' : plainTier(project.candidates[id]?.tier);
  const tier: Term =
    asked === '' || asked === has
      ? 'kept'
      : has === ''
        ? [id === undefined ? 'candidates' : `candidates.${id}.tier`]
        : 'broken';
  const other: Term = entry.unit !== undefined && unit !== undefined && entry.unit !== unit ? 'broken' : 'kept';
  const licence: Readonly<Record<string, Term>> =
    paper.licence === 'unknown' ? { licence: [at(paper.id, 'licence.needed')] } : licenceTerms(paper, hands);
  return {
    ...gathered({ tier, 'other-unit': other, ...licence }),
    first: choiceOf(entry.incentive.beforeOrder, 'unknown'),
  };
}

/** Tiers as people write them: case and spaces do not count. */
export const plainTier = (text: string | undefined): string => (text ?? '').trim().toLowerCase().replace(/\s+/g, ' ');

/** Of work kept for licensed people, gas counts only where somebody has said who does it. */
const licenceTerms = (paper: Paper, hands: Hands): Record<string, Term> =>
  Object.fromEntries(
    paper.works.filter((w) => w !== 'gas' || hands.gas !== undefined).map((w) => [`licensed-${w}`, reserved(hands, w)]),
  );
