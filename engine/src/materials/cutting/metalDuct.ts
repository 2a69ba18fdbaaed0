import {
  type CutProblem,
  type FlatPiece,
  holesOfCap,
  metalCap,
  unfoldWrap,
  wrongHoles,
} from '../../physics/cutting/index.ts';
import type { CutDuct, CutInputs } from './result.ts';

/** Inside radius of a bend, m, and where its neutral line lies. Source: `cutting.bend`; the values are common practice. */
export const bendRadius = 0.0008;
export const neutralLine = 0.33;

type Flat = {
  readonly pieces: readonly FlatPiece[];
  readonly caps: readonly FlatPiece[];
  readonly each: number;
  readonly problems: readonly CutProblem[];
};
const nothing = (problems: readonly CutProblem[]): Flat => ({ pieces: [], caps: [], each: 0, problems });

/** A straight metal duct as equal lengths, each wrapped in one piece with its holes: as long as its sheet allows; and the caps of its ends. Bad sizes: no pieces and `problems`. */
export function flatDuct({ id, width, height, length, openings, caps }: CutDuct, metal: CutInputs['metal']): Flat {
  const outside = { width: width + 2 * metal.thickness, height: height + 2 * metal.thickness };
  const bends = { thickness: metal.thickness, radius: bendRadius, neutral: neutralLine, lap: metal.lap };
  const wrap = (name: string, each: number, own: CutDuct['openings'] = []) =>
    unfoldWrap({ id: name, ...outside, length: each, ...bends, openings: own });
  const once = wrap(id, 1);
  if (!once.piece) return nothing(once.problems);
  const girth = once.piece.size.width;
  const [long, short] = [Math.max(metal.length, metal.width), Math.min(metal.length, metal.width)];
  const most = girth <= short ? long : girth <= long ? short : 0;
  if (most === 0) return nothing([{ code: 'larger-than-stock', at: ['width'], found: girth, allowed: { max: long } }]);
  const n = Math.ceil(length / most - 1e-9);
  const each = length / n;
  const parts = Array.from({ length: n }, (_, i) => ({ from: i * each, to: (i + 1) * each }));
  const problems = wrongHoles({ width, height, length, openings, caps }, parts);
  if (problems.length > 0) return nothing(problems);
  const pieces = parts.map(({ from, to }, i) => {
    const own = openings.filter((o) => o.along >= from && o.along < to).map((o) => ({ ...o, along: o.along - from }));
    return wrap(n > 1 ? `${id} ${i + 1}` : id, each, own).piece;
  });
  const closing = (['start', 'end'] as const).filter((end) => caps[end]);
  const capped = closing.map((end) => {
    const holes = holesOfCap({ width, openings }, end).map(({ id: own, u, v, shape }) => ({
      id: own,
      centre: [u, v] as const,
      shape,
    }));
    const over = { kind: 'rectangle', ...outside } as const;
    const { lap: flange, ...bend } = bends;
    return metalCap({ id: `${id} ${end}`, over, flange, ...bend, tabs: 4, holes });
  });
  const wrong = capped.flatMap((c) => c.problems);
  if (wrong.length > 0) return nothing(wrong);
  return { pieces: pieces.flatMap((p) => p ?? []), caps: capped.flatMap((c) => c.piece ?? []), each, problems: [] };
}
