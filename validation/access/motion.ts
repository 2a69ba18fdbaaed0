// Source: the closed form of a rectangle round a square corner, which the planner does not use. See README.md.
import { longestTurning } from '@kneewall/engine/access';
import { chance, corridor, planPath, replay } from '@kneewall/engine/passage';
import type { Row } from '../src/row.ts';
import { check } from './check.ts';

const corridors = 1000;
/** m to either side of the longest that turns. */
const aside = 0.001;

type Count = { wrong: number; open: number; torn: number };

/** The planner on one corner, a millimetre short of the longest that turns and a millimetre beyond it. */
function corner(a: number, b: number, width: number, longest: number, count: Count): void {
  for (const by of [-aside, aside]) {
    const piece = { a: (longest + by) / 2, b: width / 2 };
    const question = corridor(a, b, piece);
    const found = planPath(question, piece);
    if (found.answer === 'unknown') count.open++;
    else if (found.answer !== (by < 0 ? 'passes' : 'blocked')) count.wrong++;
    if (found.answer === 'passes' && !replay(question.obstacles, piece, found.path).clear) count.torn++;
  }
}

/** A thousand random corners, seeded: corridors of 0.6 to 1.5 m, pieces that have to turn. */
export function motion(): Row[] {
  const random = chance(1);
  const count: Count = { wrong: 0, open: 0, torn: 0 };
  for (let i = 0; i < corridors; ) {
    const [a, b] = [0.6 + 0.9 * random(), 0.6 + 0.9 * random()];
    const width = Math.min(a, b) * (0.2 + 0.7 * random());
    const { length } = longestTurning(a, b, width);
    if (length < Math.max(a, b, width) + 0.01) continue;
    corner(a, b, width, length, count);
    i++;
  }
  const name = `${corridors} corners, 1 mm to either side`;
  return [
    check(name, 'wrong answers', '', 0, 0, count.wrong),
    check(name, 'paths that touch', '', 0, 0, count.torn),
    check(name, 'not decided', '', 0, corridors / 50, count.open),
  ];
}
