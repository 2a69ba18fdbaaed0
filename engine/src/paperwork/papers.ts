import { inOrder, type Missing, type ResolvedProject } from '@kneewall/project';
import { type LicensedWork, licensedWorks, type Paper, type YesNo } from './result.ts';

type Entry = ResolvedProject['paperwork'][string];

export const choiceOf = <T extends string>(x: { readonly choice: T } | Missing, otherwise: T): T =>
  'choice' in x ? x.choice : otherwise;

/** Whole days since 1970 of a day that the calendar has; undefined for any other text. */
export function dayNumber(day: string): number | undefined {
  const at = Date.parse(`${day}T00:00:00Z`);
  // Some hosts roll 31 February over into March: only a day that reads back the same is one.
  return Number.isFinite(at) && new Date(at).toISOString().slice(0, 10) === day ? at / 864e5 : undefined;
}

/** All papers, by the day they are due; those without one, or with an impossible one, last. */
export function papersOf(project: ResolvedProject): Paper[] {
  return inOrder(project.paperwork)
    .map(([id, entry]) => paperOf(id, entry))
    .sort((a, b) => ((a.due ?? '~') < (b.due ?? '~') ? -1 : (a.due ?? '~') > (b.due ?? '~') ? 1 : 0));
}

function paperOf(id: string, entry: Entry): Paper {
  const { name, asksFor, due, evidence, amount, asked, waits } = entry;
  const kind = choiceOf(entry.kind, 'permit');
  const real = due !== undefined && dayNumber(due) !== undefined;
  const { licence, works } = licenceOf(entry);
  return {
    id,
    name: name?.trim() || id,
    kind,
    ...(asksFor?.trim() ? { asker: asksFor.trim() } : {}),
    status: choiceOf(entry.status, 'open'),
    ...(real ? { due } : {}),
    dueWrong: due !== undefined && !real,
    ...(asked !== undefined && dayNumber(asked) !== undefined ? { asked } : {}),
    ...('missing' in waits ? {} : { waits: Math.ceil(waits.likely) }),
    evidence: (evidence ?? '').trim() !== '',
    ...('missing' in amount ? {} : { amount: { low: amount.low, likely: amount.likely, high: amount.high } }),
    licence,
    works,
  };
}

/** Work marked counts as a yes, unless somebody says no; yes without any mark is for all of it. */
function licenceOf({ licence, licensed }: Entry): { licence: YesNo; works: readonly LicensedWork[] } {
  const said = choiceOf(licence.needed, 'unknown');
  const marked = licensedWorks.filter((w) => licence[w]);
  const needed = said === 'unknown' && (licensed || licence.all || marked.length > 0) ? 'yes' : said;
  const all = licence.all || marked.length === 0;
  return { licence: needed, works: needed === 'yes' ? (all ? licensedWorks : marked) : [] };
}
