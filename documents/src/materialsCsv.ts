import type { Plan } from '@kneewall/engine';
import { printQuantity, type System } from '@kneewall/project';

/** Characters with which a spreadsheet would start a formula, with their full-width twins. */
const formulaStart = /^\s*[=+\-@\t\r＝＋－＠]/;

/** One text cell: guarded against formulas, quoted where it has to be. Numbers are written by type and never come here. */
export function csvCell(text: string): string {
  const safe = formulaStart.test(text) ? `'${text}` : text;
  return /[",\n\r]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}

/** What to buy so far, one line each: what, how much in words, the number in the kind's own unit, and the likely cost where its price is entered. */
export function materialsCsv(plan: Plan, units: System): string {
  const rows = plan.materials.map((m) =>
    [
      csvCell(m.what),
      csvCell(printQuantity(m.amount, m.kind, units)),
      String(m.amount),
      csvCell(m.trade),
      m.cost ? String(m.cost.likely) : '',
    ].join(','),
  );
  return `${['What,How much,Amount,Trade,Costs', ...rows].join('\r\n')}\r\n`;
}
