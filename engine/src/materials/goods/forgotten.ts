import type { MaterialLine } from '../../plan/lines.ts';
import type { Forgotten, Stock } from '../result.ts';

/** Asked for as soon as a line of one of these words, or of one of these trades, is on the list. */
const askedBy: Readonly<Record<string, readonly string[]>> = {
  'strap-tool': ['air/duct:flexible'],
  'jacket-tape': ['air/duct:flexible'],
  'hole-saw': ['lineset/sleeve'],
  'coupling-spanners': ['lineset/set'],
  'vacuum-pump': ['lineset/set'],
  'spare-pipe': ['condensate/pipe'],
  'wire-connectors': ['circuit/'],
  'voltage-tester': ['circuit/'],
  'fire-stop': ['circuit/', 'lineset/sleeve', 'air/duct'],
  'dust-masks': ['access/', 'loads/sealant', 'air/duct'],
  'kneeling-boards': ['access/', 'air/duct'],
  batteries: ['equipment/thermostat', 'access/lamp'],
  'filter-rack': ['air/filter'],
  'boot-insulation': ['air/boots'],
  'control-cable': ['equipment/thermostat'],
  'co-alarm': ['equipment/unit'],
  'drop-sheets': ['air/face', 'air/transfer'],
};

/** What nobody's list names and everybody drives back for, as far as something on the list asks for it. */
export function forgotten(lines: readonly MaterialLine[], stock: readonly Stock[]): Forgotten[] {
  const words = [...new Set(lines.flatMap((l) => (l.amount > 0 ? wordsOf(l) : [])))];
  return Object.entries(askedBy).flatMap(([id, asks]): Forgotten[] => {
    const because = words.filter((w) => asks.some((a) => (a.endsWith('/') ? w.startsWith(a) : w === a)));
    if (because.length === 0) return [];
    return [{ id, because, atHand: stock.some((s) => s.line === `forgotten/${id}`) }];
  });
}

/** The word of a line, and that word with the kind of thing it is like. */
function wordsOf({ id, like }: MaterialLine): string[] {
  const word = id.split(':')[0] ?? id;
  return like ? [word, `${word}:${like.id.split(' ')[0]}`] : [word];
}
