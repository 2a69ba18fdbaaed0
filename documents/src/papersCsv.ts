import { type Paper, type Plan, paperKindTitle, paperStatusTitle, workTitle } from '@kneewall/engine';
import { csvCell } from './materialsCsv.ts';

/** Whether a paper wants a licensed installer, in words: for what, or that nobody has said. */
export function licenceWords({ licence, works }: Paper): string {
  if (licence !== 'yes') return licence === 'no' ? 'no' : 'not known';
  return works.length === 4 ? 'for all of it' : works.map((w) => workTitle[w].toLowerCase()).join('; ');
}

/** All papers by the day they are due, one line each. Nothing entered gives the heads alone. */
export function papersCsv(plan: Plan): string {
  const rows = (plan.trades.paperwork?.papers ?? []).map((p) =>
    [
      csvCell(p.name),
      csvCell(paperKindTitle[p.kind]),
      csvCell(p.asker ?? ''),
      csvCell(p.due ?? (p.dueWrong ? 'no such day' : '')),
      csvCell(paperStatusTitle[p.status]),
      csvCell(licenceWords(p)),
      p.evidence ? 'yes' : 'no',
      p.amount ? String(p.amount.likely) : '',
    ].join(','),
  );
  const heads = 'Paper,Kind,Who asks,By,Stands,Licensed installer,Evidence,Amount';
  return `${[heads, ...rows].join('\r\n')}\r\n`;
}
