import type { MaterialLine } from '../../plan/lines.ts';
import type { Delivery, ListLine, Shop } from '../result.ts';

/** Things as they were typed, one after the other with semicolons or line ends between. */
export const goodsNamed = (text: string | undefined): readonly string[] =>
  (text ?? '').split(/[;\n]/).flatMap((name) => (name.trim() === '' ? [] : [name.trim()]));

/** All that a trade's line is called: its own id and words, those of the thing in the shop, the entry it is for. */
export const namesOf = ({ id, trade, what, like, for: entry }: MaterialLine): string[] => [
  id,
  what,
  ...(like ? [`${trade}/${like.id}`, like.what] : []),
  ...(entry === undefined ? [] : [entry]),
];

/** The same of a line of the list. */
export const namesOnList = ({ id, what, from }: Pick<ListLine, 'id' | 'what' | 'from'>): string[] => [
  id,
  what,
  ...from.flatMap((f) => [f.id, f.what, ...(f.for === undefined ? [] : [f.for])]),
];

/** Whether a thing with these names is meant: by one of them, or by how it begins. Letters are taken as small. */
export const isCalled = (said: string, names: readonly string[]): boolean => {
  const wanted = plain(said);
  return names.some(
    (name) => plain(name).startsWith(wanted) && !/^[\p{L}\p{N}]/u.test(plain(name).slice(wanted.length)),
  );
};

const plain = (name: string): string => name.toLowerCase().replaceAll(/\s+/g, ' ').trim();

type Comes = Pick<Delivery, 'goods' | 'amounts' | 'brings'>;

/**
 * The deliveries a thing comes with: all that name it or say how much of it they bring; else the first that brings what
 * comes from its shop and names nothing. `deliveries` in the order in which they come. None: it is fetched by hand.
 */
export function comesWith<D extends Comes>(
  names: readonly string[],
  shop: Shop,
  deliveries: readonly D[],
): readonly D[] {
  const named = deliveries.filter((d) => [...d.goods, ...d.amounts.map((a) => a.good)].some((g) => isCalled(g, names)));
  if (named.length > 0) return named;
  const first = deliveries.find((d) => d.goods.length === 0 && (d.brings === 'all' || d.brings === shop));
  return first ? [first] : [];
}
