import type { MaterialLine } from '../../plan/lines.ts';
import type { Outcome } from '../../plan/outcome.ts';
import { jointLines } from './joint/lines.ts';
import { madeLines } from './made/lines.ts';
import type { CutAnswers } from './result.ts';
import { spliceLines } from './splices.ts';

/** The needs of all trades, with the board of drawn boxes as counted sheets in place of the area of their walls, once they are laid. */
export function withSheets(lines: readonly MaterialLine[], cut: Outcome<CutAnswers>): readonly MaterialLine[] {
  if (!cut.ok) return lines;
  const laid = new Set(laidBoard(cut));
  return [...lines.filter((l) => !laid.has(l.id)), ...cutLines(cut.value)];
}

/** What the pieces take beyond the ducts that other trades name: sheets of board, what is made of metal, and what splices need. */
export const cutLines = (cut: CutAnswers): MaterialLine[] => [
  ...sheetLines(cut),
  ...jointLines(cut),
  ...madeLines(cut),
  ...spliceLines(cut),
];

/** Lines of the air trade whose board is counted in sheets; none before every box of it is laid. */
export const laidBoard = (cut: Outcome<CutAnswers>): readonly string[] =>
  cut.ok && sheetLines(cut.value).length > 0 ? cut.value.boxes.map((b) => `air/duct:${b.id}`) : [];

/** Sheets of board by thickness, of which every piece has its place; metal is bought made or by the sheet, as one likes. */
export function sheetLines({ boxes, joints, sheets }: CutAnswers): MaterialLine[] {
  const whole = [...boxes.map((b) => b.flat), ...joints].every((x) => x.problems.length === 0);
  if (!whole) return [];
  return sheets
    .filter((s) => s.of === 'board' && s.plan.problems.length === 0)
    .map(({ thickness, plan }) => ({
      id: `materials/board:${Math.round(thickness * 1000)}`,
      trade: 'materials',
      what: `Duct board, ${boardNames[Math.round(thickness * 10000)] ?? `${Math.round(thickness * 1000)} mm`}, sheets as laid out on the cut sheets`,
      kind: 'count',
      amount: plan.cost,
      soldBy: 1,
    }));
}

const boardNames: Readonly<Record<number, string>> = {
  254: '1 in (25 mm)',
  381: '1 1/2 in (38 mm)',
  508: '2 in (51 mm)',
};
