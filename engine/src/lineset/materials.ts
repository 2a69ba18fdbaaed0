import type { MaterialLine } from '../plan/lines.ts';
import type { LinesetResult } from './result.ts';

const count = (id: string, what: string, amount: number): MaterialLine => ({
  id: `lineset/${id}`,
  trade: 'lineset',
  what,
  kind: 'count',
  amount,
  soldBy: 1,
  for: 'routes.lineset',
});

/** The set, its way through the wall and along it, and what the unit stands or hangs on. */
export function materials({ set, needed }: LinesetResult): readonly MaterialLine[] {
  if (!set.ok || !needed.ok) return [];
  return [
    {
      id: 'lineset/set',
      trade: 'lineset',
      what: 'Line set, insulated, pre-charged where the unit asks for it',
      kind: 'length',
      amount: set.value.length,
      soldBy: set.value.length,
      for: 'routes.lineset.stock',
    },
    count('sleeve', 'Sleeve for the hole in the wall, sloping outward, with putty or foam to close it', 1),
    count('cover', 'Cover for the hole outside, open below, and sealant that stands the sun', 1),
    count('clips', 'Clips or cover for the line, one every 0.6 m or 2 ft', Math.ceil(needed.value.high / 0.6)),
    count('tape', 'Tape for insulation where the line is bare, that stands the sun', 2),
    count('stand', 'Bracket or stand for the outdoor unit, with anchors for that wall as its maker says', 1),
    count('feet', 'Rubber feet for the outdoor unit', 4),
  ];
}
