import type { Own, PriceEntry, PriceUsed, Unused } from '../result.ts';
import type { Merged } from './merged.ts';
import { packFor, piecesFor } from './pieces.ts';
import { soldIn } from './soldIn.ts';

type Priced = { readonly used?: PriceUsed & { readonly entry?: PriceEntry }; readonly unused: readonly Unused[] };

/**
 * The price of a line: one entered for this very line, for this duct, or of that name; of several packs the one that
 * comes to the least money for all of it. Two prices of one name and no word which: none is used, and that is said.
 */
export function priceFor(line: Merged, wanted: number, own: Own): Priced {
  const [first] = line.from;
  const itself =
    line.good.itself && line.from.length === 1 && first?.for !== undefined ? own.costs[first.for] : undefined;
  const { entries, several } = entriesFor(line, own.prices);
  if (several) return { unused: entries.map((e) => ({ path: e.path, name: e.name, because: 'several' })) };
  const unused: Unused[] = [];
  let best: Priced['used'];
  let least = Number.POSITIVE_INFINITY;
  for (const entry of entries) {
    const holds = heldBy(entry, line);
    if (holds === undefined) {
      unused.push({ path: entry.path, name: entry.name, because: 'unit' });
      continue;
    }
    // What is laid out was laid out in pieces of one length: a price of that length stands before any other.
    const other = line.laid && Math.abs(holds - line.laid.piece) > 1e-6 ? 1e9 : 0;
    const cost = other + Math.max(1, piecesFor(wanted, holds)) * entry.price.likely;
    if (cost < least) {
      least = cost;
      best = { path: entry.path, name: entry.name, each: entry.price, holds, entry };
    }
  }
  if (!best && itself) best = { path: first?.for ?? '', name: line.what, each: itself, holds: line.need };
  return best ? { used: best, unused } : { unused };
}

function entriesFor(line: Merged, prices: readonly PriceEntry[]): { entries: PriceEntry[]; several: boolean } {
  const own = prices.filter((p) => p.line === line.id);
  if (own.length > 0) return { entries: own, several: false };
  const free = prices.filter((p) => p.line === undefined);
  const ducts = free.filter((p) => p.duct !== undefined && line.like === likeOf(p));
  if (ducts.length > 0) return { entries: ducts, several: false };
  const named = free.filter((p) => p.duct === undefined && isNamed(p.name, line));
  return { entries: named, several: named.length > 1 };
}

/** What the air trade calls a duct, and its ends. */
const likeOf = ({ duct, part }: PriceEntry): string =>
  part === 'end' ? `end ${duct}` : part === 'run' ? `${duct}` : '';

const plain = (name: string): string => name.toLowerCase().replaceAll(/\s+/g, ' ').trim();

/** By the list's own name, or beginning with a name of that kind of thing. */
function isNamed(name: string, line: Merged): boolean {
  const said = plain(name);
  if (said === plain(line.what)) return true;
  const named = line.good.names.some((n) => said === n || said.startsWith(`${n} `) || said.startsWith(`${n},`));
  return named && (line.like === undefined || sizeFits(said, line.like));
}

/** Whether the size a name states is that of the thing, where that has one; within a millimetre. */
function sizeFits(name: string, like: string): boolean {
  const size = / (\d+)$/.exec(like)?.[1];
  if (size === undefined) return true;
  const [, number, unit] = /(\d+(?:\.\d+)?)\s*(in\b|inch|"|mm\b)/.exec(name) ?? [];
  return number !== undefined && Math.abs(Number(number) * (unit === 'mm' ? 1 : 25.4) - Number(size)) <= 1;
}

function heldBy({ piece, unit }: PriceEntry, line: Merged): number | undefined {
  if (piece !== undefined && line.kind === 'length') return piece;
  const usual = packFor(line.wanted, line.good.packs);
  return soldIn(unit ?? '', line.kind, line.good.as === 'measure' ? line.wanted : usual);
}
