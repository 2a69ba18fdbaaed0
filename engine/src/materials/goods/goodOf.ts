import type { MaterialLine } from '../../plan/lines.ts';
import type { Good } from './good.ts';
import { special, usual } from './goods.ts';

/** What is known of a line's thing in shops: of its own word, of what it is like, else of its trade. */
export function goodOf(line: MaterialLine): Good {
  const word = line.id.split(':')[0] ?? line.id;
  const kind = `${word}:${line.like?.id.split(' ')[0] ?? ''}`;
  const good = { ...(usual[line.trade] ?? (usual.other as Good)), ...(special[kind] ?? special[word]) };
  // A trade that knows how its thing is sold is believed, unless a kind of thing comes in several packs.
  return line.soldBy !== undefined && good.packs.length < 2 ? { ...good, packs: [line.soldBy] } : good;
}
