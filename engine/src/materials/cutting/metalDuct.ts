import { type CutProblem, type FlatPiece, unfoldWrap } from '../../physics/cutting/index.ts';
import type { CutDuct, CutInputs } from './result.ts';

/** Inside radius of a bend, m, and where its neutral line lies. Source: `cutting.bend`; the values are common practice. */
const radius = 0.0008;
const neutral = 0.33;

/** A straight metal duct as equal lengths, each wrapped in one piece: as long as its sheet allows. Bad sizes: no pieces and `problems`. */
export function flatDuct(
  { id, width, height, length }: CutDuct,
  metal: CutInputs['metal'],
): { readonly pieces: readonly FlatPiece[]; readonly each: number; readonly problems: readonly CutProblem[] } {
  const outside = { width: width + 2 * metal.thickness, height: height + 2 * metal.thickness };
  const wrap = (name: string, each: number) =>
    unfoldWrap({ id: name, ...outside, length: each, thickness: metal.thickness, radius, neutral, lap: metal.lap });
  const once = wrap(id, 1);
  if (!once.piece) return { pieces: [], each: 0, problems: once.problems };
  const girth = once.piece.size.width;
  const [long, short] = [Math.max(metal.length, metal.width), Math.min(metal.length, metal.width)];
  const most = girth <= short ? long : girth <= long ? short : 0;
  if (most === 0) {
    return {
      pieces: [],
      each: 0,
      problems: [{ code: 'larger-than-stock', at: ['width'], found: girth, allowed: { max: long } }],
    };
  }
  const n = Math.ceil(length / most - 1e-9);
  const pieces = Array.from({ length: n }, (_, i) => wrap(n > 1 ? `${id} ${i + 1}` : id, length / n).piece);
  return { pieces: pieces.flatMap((p) => p ?? []), each: length / n, problems: [] };
}
