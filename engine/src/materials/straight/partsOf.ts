import type { StraightPiece } from '../../plan/lines.ts';
import type { Good } from '../goods/good.ts';

/** Whole nanometres in a metre, as the cutting counts them: parts then fill a length to its last one. */
const nanometres = 1e9;

/**
 * The pieces as they are cut from lengths of `longest` m. What carries people is never joined and stays as it is, too long or
 * not; pipe is joined where lengths end; foam is laid end to end through `atHand` and then through whole lengths, and joined
 * wherever one ends, so that no rest of it is lost but the last. Source: `materials.straight`.
 */
export function partsOf(
  pieces: readonly StraightPiece[],
  joints: Good['joints'],
  { longest, atHand }: { readonly longest: number; readonly atHand: readonly number[] },
): readonly StraightPiece[] {
  if (joints === 'none') return pieces;
  if (joints === 'anywhere') return endToEnd(pieces, longest, atHand);
  return pieces.flatMap((p) => joinedAtEnds(p, longest));
}

/** Whole lengths and a rest where a piece is longer than they are. */
function joinedAtEnds({ name, length, count }: StraightPiece, longest: number): StraightPiece[] {
  const whole = Math.max(0, Math.ceil(length / longest - 1e-9) - 1);
  const rest = length - whole * longest;
  return [
    ...(whole > 0 ? [{ name, length: longest, count: whole * count }] : []),
    ...(count > 0 && rest > 0 ? [{ name, length: rest, count }] : []),
  ];
}

function endToEnd(pieces: readonly StraightPiece[], longest: number, atHand: readonly number[]): StraightPiece[] {
  const hands = atHand.map((m) => Math.round(m * nanometres));
  const usual = Math.round(longest * nanometres);
  let room = hands.shift() ?? usual;
  const parts: StraightPiece[] = [];
  for (const { name, length, count } of pieces)
    for (let n = 0; n < count; n++) {
      let left = Math.round(length * nanometres);
      while (left > 0) {
        const part = Math.min(left, room);
        parts.push({ name, length: part / nanometres, count: 1 });
        left -= part;
        room -= part;
        if (room === 0) room = hands.shift() ?? usual;
      }
    }
  return parts;
}
