import { type Paper, type Plan, paperKindTitle, paperStatusTitle, workTitle } from '@kneewall/engine';
import type { List } from './list.ts';

/** Whether a paper wants a licensed installer, in words: for what, or that nobody has said. */
export function licenceWords({ licence, works }: Paper): string {
  if (licence !== 'yes') return licence === 'no' ? 'no' : 'not known';
  return works.length === 4 ? 'for all of it' : works.map((w) => workTitle[w].toLowerCase()).join('; ');
}

/** All papers by the day they are due. */
export const paperList = ({ trades }: Plan): List => ({
  file: 'papers.csv',
  title: 'Papers',
  heads: ['Paper', 'Kind', 'Who asks', 'By', 'Stands', 'Licensed installer', 'Evidence', 'Amount'],
  rows: (trades.paperwork?.papers ?? []).map((p) => [
    ...[p.name, paperKindTitle[p.kind], p.asker, p.due ?? (p.dueWrong ? 'no such day' : undefined)],
    ...[paperStatusTitle[p.status], licenceWords(p), p.evidence ? 'yes' : 'no', p.amount?.likely],
  ]),
});
