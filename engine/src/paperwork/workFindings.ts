import { unresolved } from '../plan/outcome.ts';
import { type Found, telling } from '../plan/telling.ts';
import type { PaperworkResult, WorkRow } from './result.ts';

/** For each kind of work that is usually kept for licensed people: whether whoever is to do it may. */
export const workFindings = ({ works, papers }: PaperworkResult): Found[] =>
  works.map((row) => {
    const named = (ids: readonly string[]): string =>
      papers
        .filter((p) => ids.includes(p.id))
        .map((p) => p.asker ?? p.name)
        .join(', ');
    return telling('paperwork', `work.hands.${row.work}`)(
      {
        id: `hands:${row.work}`,
        holdPoint: 'decide',
        consequence: row.work === 'startUp' ? 'damage' : 'harm',
        kind: 'count',
        limit: { min: 1 },
        source: 'paperwork.authority',
        facts: {
          work: row.work,
          hands: row.hands ?? '',
          wanted: named(row.wanted),
          free: named(row.free),
          silent: named(row.silent),
        },
      },
      (rec) => {
        const value = mayDo(row);
        rec.step('may', 'table', {}, value, '', 'paperwork.authority');
        return value;
      },
    );
  });

/** 1 where a licensed person does it, or the law's papers leave it free; 0 where one of them forbids; else nobody knows. */
function mayDo({ work, hands, wanted, free, silent }: WorkRow): number {
  if (hands === undefined) return unresolved('missing', `work.hands.${work}`);
  if (hands === 'licensed') return 1;
  if (wanted.length > 0) return 0;
  if (silent.length > 0) return unresolved('missing', ...silent.map((id) => `paperwork.${id}.licence.needed`));
  return free.length > 0 ? 1 : unresolved('missing', 'paperwork');
}
