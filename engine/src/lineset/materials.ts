import type { MaterialLine } from '../plan/lines.ts';
import { thickSaid, usualPlywood } from '../plan/plywood.ts';
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
export function materials({ set, needed, channel, backing }: LinesetResult): readonly MaterialLine[] {
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
    ...heldBy(needed.value.high, channel),
    count('tape', 'Tape for insulation where the line is bare, that stands the sun', 2),
    count('stand', 'Bracket or stand for the outdoor unit, with anchors for that wall as its maker says', 1),
    ...panel(backing),
    count('feet', 'Rubber feet for the outdoor unit', 4),
  ];
}

/** Clips along the whole line; or inside clips, and outside a channel in straight stretches with a piece for each turn. */
function heldBy(line: number, channel: LinesetResult['channel']): MaterialLine[] {
  const clips = (m: number, where: string) =>
    count('clips', `Clips or cover for the line${where}, one every 0.6 m or 2 ft`, Math.ceil(m / 0.6));
  if (!channel?.ok || channel.value.legs.length === 0) return [clips(line, '')];
  const { legs, sold } = channel.value;
  const outside = legs.reduce((a, x) => a + x, 0);
  const turns = legs.length - 1;
  return [
    {
      id: 'lineset/channel',
      trade: 'lineset',
      what: 'Channel with a cover for the line outside, with anchors for that wall',
      kind: 'length',
      amount: outside,
      soldBy: sold,
      pieces: legs.map((length, i) => ({ name: `Channel, stretch ${i + 1} from the wall’s hole`, length, count: 1 })),
      for: 'routes.lineset',
    },
    ...(turns > 0 ? [count('channel-turns', 'Corner pieces and an end piece for that channel', turns + 1)] : []),
    ...(line > outside ? [clips(line - outside, ' inside')] : []),
  ];
}

function panel(backing: LinesetResult['backing']): MaterialLine[] {
  if (!backing?.ok) return [];
  const { width, height } = backing.value;
  return [
    {
      id: 'lineset/backing',
      trade: 'lineset',
      what: `Plywood for outside, treated, ${thickSaid(usualPlywood)}, behind the bracket, screwed to every stud it crosses`,
      kind: 'area',
      amount: width * height,
      panels: {
        thickness: usualPlywood,
        pieces: [{ name: 'Behind the bracket', length: width, width: height, count: 1 }],
      },
      for: 'routes.lineset.hold.backing',
    },
  ];
}
