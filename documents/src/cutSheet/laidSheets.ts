import type { Plan, TradeResults } from '@kneewall/engine';

type Cut = Extract<TradeResults['materials']['cut'], { ok: true }>['value'];
type Sheets = Cut['sheets'][number];
export type CutPiece = Sheets['pieces'][number];
export type Lies = Sheets['plan']['sheets'][number]['placed'][number];

/** A flat piece with the letter by which drawing, list and board know it. `of`: the section it is for. */
export type MarkedPiece = {
  readonly mark: string;
  readonly title: string;
  readonly piece: CutPiece;
  readonly lies: Lies;
};

/** One sheet of stock as it is cut; `number` of `count` of its kind. */
export type LaidSheet = {
  readonly of: 'board' | 'metal';
  readonly thickness: number;
  readonly number: number;
  readonly count: number;
  readonly sheet: Sheets['plan']['sheets'][number];
  readonly pieces: readonly MarkedPiece[];
};

/** Every sheet that is cut, its pieces marked with letters in the order in which they lie. Empty until the pieces are laid out. */
export function laidSheets(plan: Pick<Plan, 'trades'>): LaidSheet[] {
  const cut = plan.trades.materials?.cut;
  if (!cut?.ok) return [];
  let next = 0;
  return cut.value.sheets.flatMap(({ of, thickness, pieces, plan: { sheets } }) =>
    sheets.map(
      (sheet, i): LaidSheet => ({
        of,
        thickness,
        number: i + 1,
        count: sheets.length,
        sheet,
        pieces: sheet.placed.flatMap((lies) => {
          const piece = pieces.find((p) => p.id === lies.piece);
          return piece ? [{ mark: letter(next++), title: titleOf(piece, cut.value), piece, lies }] : [];
        }),
      }),
    ),
  );
}

/** A, B … Z, then A1, B1 …. */
const letter = (n: number): string => `${String.fromCharCode(65 + (n % 26))}${n >= 26 ? Math.floor(n / 26) : ''}`;

/** What a piece is of its box: the rest of its id says it. */
function titleOf(piece: CutPiece, { names }: Cut): string {
  const name = names[piece.for] ?? piece.for;
  const rest = piece.id.slice(piece.for.length).trim();
  if (rest === 'end') return `${name}, cap of the far end`;
  if (rest === 'start') return `${name}, cap of the near end`;
  return rest === '' ? name : `${name}, part ${rest}`;
}
