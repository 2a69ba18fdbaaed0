import type { Piece } from './obstacles.ts';
import { type Answer, planPath, type Question } from './planPath.ts';

/** A question as it stands for a piece grown by so much: starts and goals keep clear of it. */
export type Asked = (piece: Piece) => Question;

/**
 * How much a piece may grow on every side and still pass, m: `low` is certified by a path, `high` by a proof that none exists
 * or by `most`; below 0 where it has to shrink. `path` goes with `low`. `decided` is false where a question between stayed open.
 */
export type Room = {
  readonly low: number;
  readonly high: number;
  readonly path: readonly number[];
  readonly cells: number;
  readonly decided: boolean;
};

const grown = ({ a, b }: Piece, by: number): Piece => ({ a: a + by, b: b + by });

/**
 * Brackets the room by halving between `least` (tried first where it may fail) and `most`, to `within` m. A bound of widths
 * known beforehand belongs into `most`. Nothing where even the least does not pass.
 */
export function roomOnWay(asked: Asked, piece: Piece, least: number, most: number, within = 0.001): Room | undefined {
  let cells = 0;
  let open: number | undefined;
  const ask = (by: number): Answer => {
    const of = grown(piece, by);
    const answer = planPath(asked(of), of);
    cells += answer.cells;
    return answer;
  };
  const floor = -Math.min(piece.a, piece.b) + 0.005;
  let low = Number.NEGATIVE_INFINITY;
  let high = most;
  let path: readonly number[] = [];
  const tries = [0, least, -0.02, -0.08, floor].filter((by) => by <= most).sort((x, y) => y - x);
  for (const by of tries) {
    if (by < floor) continue;
    const answer = ask(by);
    if (answer.answer === 'passes') {
      [low, path] = [by, Array.from(answer.path)];
      break;
    }
    if (answer.answer === 'blocked') high = Math.min(high, by);
    else open = by;
  }
  if (low === Number.NEGATIVE_INFINITY) return undefined;
  while (high - low > within) {
    const by = (low + high) / 2;
    const answer = ask(by);
    if (answer.answer === 'passes') [low, path] = [by, Array.from(answer.path)];
    else {
      // What stays open counts as closed for the bracket, and is said.
      high = by;
      if (answer.answer === 'unknown') open = by;
    }
  }
  return { low, high, path, cells, decided: open === undefined || open <= low };
}
