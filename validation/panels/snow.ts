import { coveredAfter, coversAnew, skyAbove, snowLoss } from '@kneewall/engine/physics';
import type { Row } from '../src/row.ts';
import { check } from './check.ts';

const falls = [1, 5, 0.6, 4, 0.23, -5, 19] as const;
const starts = [0, 1, 0, 1, 0, 0, 1] as const;
const covers = [1, 1, 0.5, 0.6, 0.2, 0.4, 0] as const;
const losses = [1, 1, 0.5, 0.625, 0.25, 0.5, 0] as const;

/** Snow that lies and slides, and what a level horizon leaves of the sky. */
export const snow = (): Row[] => [
  ...[1, 0.8607, 0.7214].map((expected, n) => {
    let covered = 1;
    for (let i = 0; i < n; i++) covered = coveredAfter(covered, 45, true);
    return check(`${n} hours of sliding at 45 degrees`, 'covered', '', [expected, 1e-5], covered, 'looked up');
  }),
  check('a quarter of an hour', 'slid', '', [0.25 * 0.1393, 1e-5], 1 - coveredAfter(1, 45, true, 0.25), 'looked up'),
  ...falls.map((x, i) => check(`hour ${i + 1}`, 'starts', '', [starts[i] ?? 0, 0], Number(coversAnew(x)), 'looked up')),
  ...covers.map((x, i) =>
    check(`${x} covered, 8 strings, hour ${i + 1}`, 'loss', '', [losses[i] ?? 0, 1e-12], snowLoss(x, 8), 'looked up'),
  ),
  ...(
    [
      [10, 0.96985],
      [20, 0.88302],
      [30, 0.75],
    ] as const
  ).map(([h, kept]) => check(`horizon ${h} degrees`, 'sky', '', [kept, 1e-5], skyAbove(h))),
];
