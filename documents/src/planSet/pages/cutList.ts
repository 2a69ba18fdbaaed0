import { bothCutLengths } from '../../cutSheet/cutLength.ts';
import { cutRows } from '../../cutSheet/cutRows.ts';
import { type Block, bold, lead, page, table } from '../block.ts';
import type { SetInput } from '../setInput.ts';

/** Every measure of every piece, and what is cut from lengths and bags; nothing until the pieces are laid out. */
export function cutListPages({ plan, units }: SetInput): Block[] {
  const rows = cutRows(plan, units);
  if (rows.length === 0) return [];
  const flat = rows.filter((r) => r.sideways !== undefined || r.up !== undefined || r.what.startsWith('Corner'));
  const straight = rows.filter((r) => !flat.includes(r));
  // A measure is read in one line.
  const both = (m: number | undefined) => (m === undefined ? '' : bothCutLengths(m, units).replaceAll(' ', '\u00a0'));
  return [
    page('Cut list'),
    lead(
      'Every measure counts from the black corner of its piece as it lies on its sheet. Mark out all of a piece, prove its diagonal, then cut.',
    ),
    ...(flat.length === 0
      ? []
      : [
          table(
            [
              { head: 'Piece', width: 120 },
              { head: 'What', width: '*' },
              { head: 'Sideways', width: 90, right: true },
              { head: 'Up', width: 90, right: true },
            ],
            flat.map((r, i) => [
              // Its letter is enough once its name has been said.
              flat[i - 1]?.piece === r.piece ? (r.mark ?? '') : bold(r.piece),
              r.size ? `${r.what}, ${r.size}` : r.what,
              both(r.sideways ?? r.length),
              both(r.up),
            ]),
            { title: 'Pieces from sheets' },
          ),
        ]),
    ...(straight.length === 0
      ? []
      : [
          lead(
            'Goggles and gloves at the saw. Pipe is joined where a length ends, pipe foam butted and taped there (common practice, no source); timber is never joined. It carries people and the unit: a licensed engineer first where joists are short of strength; this is no design of structure.',
          ),
          table(
            [
              { head: 'From', width: 160 },
              { head: 'For', width: '*' },
              { head: 'What', width: 110 },
              { head: 'Length', width: 90, right: true },
            ],
            straight.map((r) => [r.from, r.piece, r.what, both(r.length)]),
            { title: 'From lengths and bags' },
          ),
        ]),
  ];
}
