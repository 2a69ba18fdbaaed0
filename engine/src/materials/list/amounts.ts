import type { Order, Own, Stock, Unused } from '../result.ts';
import { type Merged, wasteOf } from './merged.ts';
import { amountIn } from './soldIn.ts';

type Amount = { readonly amount: number; readonly unused: readonly Unused[] };

const plain = (name: string): string => name.toLowerCase().replaceAll(/\s+/g, ' ').trim();

/**
 * What of a line is at hand: entered for it, for its duct, or under its name. `ticked`: of that, what says no more than how
 * much it is, so that no cut plan can lay it out.
 */
export function atHand(
  line: Merged,
  piece: number,
  { stock }: Pick<Own, 'stock'>,
): Amount & { readonly ticked: number } {
  const mine = stock.filter(
    (s) =>
      // Sheets to cut from are laid out before the rest is counted.
      !s.sheet &&
      (s.amount !== undefined || s.each !== undefined) &&
      (s.line === line.id ||
        (s.line === undefined && s.duct !== undefined && s.duct === line.like) ||
        (s.line === undefined && s.duct === undefined && plain(s.name) === plain(line.what))),
  );
  const plainOnes = mine.filter((s) => s.line === line.id && s.each === undefined && s.duct === undefined);
  return { ...added(line, piece, mine), ticked: added(line, piece, plainOnes).amount };
}

/** What of a line was ordered: ticked on the list, or all of an entry that is there already; `all`: every entry it is for. */
export function ordered(line: Merged, piece: number, { orders }: Own): Amount & { readonly all: boolean } {
  const ticked = added(
    line,
    piece,
    orders.filter((o) => o.line === line.id),
  );
  const whole = line.good.itself
    ? line.from.filter((x) => orders.some((o) => o.line === undefined && o.of !== undefined && o.of === x.for))
    : [];
  return {
    amount: ticked.amount + whole.reduce((sum, x) => sum + x.amount + wasteOf(x, line.good), 0),
    unused: ticked.unused,
    all: whole.length > 0 && whole.length === line.from.length,
  };
}

function added(line: Merged, piece: number, entries: readonly (Stock | Order)[]): Amount {
  const unused: Unused[] = [];
  let amount = 0;
  for (const entry of entries) {
    const read = amountOf(entry, line, piece);
    if (read === undefined)
      unused.push({ path: entry.path, name: entry.name, because: entry.amount === undefined ? 'no-amount' : 'amount' });
    else amount += read;
  }
  return { amount, unused };
}

/** Of pieces whose length is entered the amount counts pieces, and is one where nothing is said. */
function amountOf(entry: Stock | Order, line: Merged, piece: number): number | undefined {
  const each = 'each' in entry && line.kind === 'length' ? entry.each : undefined;
  if (entry.amount === undefined) return each;
  const counted = each === undefined ? undefined : amountIn(entry.amount, 'count', 1);
  return counted === undefined || each === undefined ? amountIn(entry.amount, line.kind, piece) : counted * each;
}
