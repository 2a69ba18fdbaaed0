import type { MaterialLine } from '../plan/lines.ts';
import { sizeSaid } from '../plan/sizeSaid.ts';
import type { DrawnPiece, PieceSize } from './drawnPieces.ts';

/** Fittings that are bought as pieces; collars are counted by run, bends of flexible duct are the duct itself. */
const pieces: Readonly<Record<string, string>> = {
  'elbow-round': 'Round elbows',
  'elbow-round-tight': 'Round elbows, tight',
  'elbow-rectangular': 'Rectangular elbows',
  'elbow-rectangular-vaned': 'Rectangular elbows with vanes',
  'tee-branch': 'Tees or wyes for branches',
  reducer: 'Reducers',
};

/** Elbows, tees and reducers as they are drawn and a boot for each supply register, each with the sizes it is bought by. */
export const fittingLines = (drawn: readonly DrawnPiece[]): MaterialLine[] =>
  drawn.flatMap((piece): MaterialLine[] => {
    const boot = piece.kind === 'boot' || piece.kind === 'boot-elbow';
    const name = boot ? bootName(piece) : pieces[piece.kind];
    if (name === undefined || !(piece.count > 0) || (piece.cut && piece.kind === 'reducer')) return [];
    const word = boot ? 'boots' : piece.kind;
    const what = [name, ...wordsOf(piece)].join(', ');
    return [
      {
        id: `air/${word}:${piece.id}`,
        trade: 'air',
        what: `${what}, for “${piece.name}”`,
        kind: 'count',
        amount: piece.count,
        soldBy: 1,
        for: piece.for,
        // One name for all that are alike in the shop, without a space before its sizes: a price without a size stays theirs.
        like: { id: [word, ...(piece.kind === 'boot-elbow' ? ['turned'] : []), ...keysOf(piece)].join('-'), what },
      },
    ];
  });

const bootName = ({ kind }: DrawnPiece): string => (kind === 'boot-elbow' ? 'Boots that turn' : 'Boots');

const mm = (m: number): number => Math.round(m * 1000);

const keyed = (size: PieceSize): string =>
  'diameter' in size ? `${mm(size.diameter)}` : `${mm(size.width)}x${mm(size.height)}`;

/** Sizes as they are asked for in the shop: of a boot its face and its collar, of a tee or reducer both ducts. */
function wordsOf({ kind, size, other, angle }: DrawnPiece): string[] {
  if (kind.startsWith('boot'))
    return [...(other ? [`for a ${sizeSaid(other)} register`] : []), ...(size ? [`collar ${sizeSaid(size)}`] : [])];
  if (kind === 'tee-branch') return size ? [`${sizeSaid(size)}${other ? ` off ${sizeSaid(other)}` : ''}`] : [];
  if (kind === 'reducer') return size ? [`${other ? `${sizeSaid(other)} to ` : ''}${sizeSaid(size)}`] : [];
  return [...(size ? [sizeSaid(size)] : []), ...(turns(angle) ? [`${Math.round(angle)}°`] : [])];
}

function keysOf({ kind, size, other, angle }: DrawnPiece): string[] {
  const both = kind.startsWith('boot') || kind === 'tee-branch' || kind === 'reducer';
  return [
    ...(size ? [keyed(size)] : []),
    ...(both && other ? [keyed(other)] : []),
    ...(kind.startsWith('elbow') && turns(angle) ? [`${Math.round(angle)}deg`] : []),
  ];
}

/** A bend that is not the usual quarter turn. */
const turns = (angle: number | undefined): angle is number => angle !== undefined && Math.abs(angle - 90) > 0.5;
