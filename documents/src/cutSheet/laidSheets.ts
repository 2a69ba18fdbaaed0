import type { Plan } from '@kneewall/engine';
import type { Cut, CutPiece, Sheets } from './cut.ts';
import { holesOf, type MarkedHole } from './holesOf.ts';
import { jointNotes } from './jointNotes.ts';
import { madeNotes } from './madeNotes.ts';

type Laid = Sheets['plan']['sheets'][number];
type Lies = Laid['placed'][number];

/** A flat piece with the letter by which drawing, list and board know it. `of`: the section it is for. */
export type MarkedPiece = {
  readonly mark: string;
  readonly title: string;
  readonly piece: CutPiece;
  readonly holes: readonly MarkedHole[];
  readonly lies: Lies;
};

/** One sheet of stock as it is cut; `number` of `count` of its kind, or of the entry `hand` of what is at hand. */
export type LaidSheet = {
  readonly of: 'board' | 'metal' | 'panel';
  readonly thickness: number;
  readonly number: number;
  readonly count: number;
  readonly hand?: string;
  readonly sheet: Laid;
  readonly pieces: readonly MarkedPiece[];
  /** How the ducts cut from it join the unit, and what is to know of its caps and reducers. */
  readonly joints: readonly string[];
};

/** A kind of sheet with what its pieces are named by. */
type Kind = Sheets & { readonly names: Cut['names']; readonly cut?: Cut };

/** Sheets of the cut plan, then plywood, as far as they are laid out. */
function kindsOf({ trades: { materials } }: Pick<Plan, 'trades'>): Kind[] {
  const [cut, list] = [materials?.cut, materials?.list];
  return [
    ...(cut?.ok ? cut.value.sheets.map((s) => ({ ...s, names: cut.value.names, cut: cut.value })) : []),
    ...(list?.ok ? list.value.panels : []),
  ];
}

/** Every sheet that is cut, its pieces marked with letters in the order in which they lie. Empty until the pieces are laid out. */
export function laidSheets(plan: Pick<Plan, 'trades'>): LaidSheet[] {
  const kinds = kindsOf(plan);
  let next = 0;
  let kept = 0;
  // Sheets are counted over all thicknesses of a kind: a print is found again by its title.
  const heapOf = (of: LaidSheet['of'], sheet: Laid) => `${of} ${sheet.stock === of ? '' : sheet.stock}`;
  const all = kinds.flatMap(({ of, plan: { sheets } }) => sheets.map((sheet) => heapOf(of, sheet)));
  const met = new Map<string, number>();
  return kinds.flatMap((kind) =>
    kind.plan.sheets.map((sheet): LaidSheet => {
      const { of, thickness, pieces, names, cut } = kind;
      const heap = heapOf(of, sheet);
      met.set(heap, (met.get(heap) ?? 0) + 1);
      return {
        of,
        thickness,
        number: met.get(heap) ?? 1,
        count: all.filter((h) => h === heap).length,
        ...(sheet.stock === of ? {} : { hand: names[sheet.stock] ?? sheet.stock }),
        sheet: {
          ...sheet,
          cuts: sheet.cuts.filter((c) => !alongEdge(c, sheet)),
          rests: sheet.rests.map((r) => (r.remnant === undefined ? r : { ...r, remnant: `K${++kept}` })),
        },
        joints: cut ? notesOf(cut, sheet, pieces) : [],
        pieces: sheet.placed.flatMap((lies) => {
          const piece = pieces.find((p) => p.id === lies.piece);
          if (!piece) return [];
          const holes = cut ? holesOf(piece, lies.turned, cut) : [];
          return [{ mark: letter(next++), title: titleOf(piece, names), piece, holes, lies }];
        }),
      };
    }),
  );
}

/** What is to be said of the joints, caps and reducers that are cut from a sheet. */
function notesOf(cut: Cut, { placed }: Laid, pieces: readonly CutPiece[]): string[] {
  const made = placed.flatMap((p) => pieces.find((x) => x.id === p.piece)?.for ?? []);
  return [
    ...jointNotes(cut, made),
    ...madeNotes(
      cut,
      made,
      placed.map((p) => p.piece),
    ),
  ];
}

/** A cut that would take less than a millimetre off the sheet's own edge: that edge serves as it is. */
const alongEdge = ({ from, to }: Laid['cuts'][number], { width, height }: Laid): boolean =>
  from[0] === to[0] ? from[0] > width - 0.001 : from[1] > height - 0.001;

/** A, B … Z, then A1, B1 …. */
const letter = (n: number): string => `${String.fromCharCode(65 + (n % 26))}${n >= 26 ? Math.floor(n / 26) : ''}`;

const sides: Readonly<Record<string, string>> = {
  top: 'top',
  bottom: 'bottom',
  left: 'left side',
  right: 'right side',
};

/** What a piece is of its box: the rest of its id says it. */
function titleOf(piece: CutPiece, names: Cut['names']): string {
  const name = names[piece.for] ?? piece.for;
  const rest = piece.id.slice(piece.for.length).trim();
  if (rest === 'end') return `${name}, cap of the far end`;
  if (rest === 'start') return `${name}, cap of the near end`;
  if (rest in sides) return `${name}, ${sides[rest]}`;
  return rest === '' ? name : `${name}, part ${rest}`;
}
