import type { Range } from '@kneewall/project';
import type { Laid } from '../cutting/laid.ts';
import type { ListLine, Own, PriceUsed, Unused } from '../result.ts';
import { atHand, ordered } from './amounts.ts';
import type { Merged } from './merged.ts';
import { packFor, piecesFor } from './pieces.ts';
import { priceFor } from './priceFor.ts';

/** A line before it is known what else of its shop was ordered. */
type Line = { readonly line: Omit<ListLine, 'since'>; readonly unused: readonly Unused[] };

/** Waste allowed, what is at hand and ordered taken off, the rest rounded up to whole pieces and priced. */
export function listLine(merged: Merged, own: Own): Line {
  const { good, like: _like, pieces: _pieces, panels: _panels, wanted, laid, ...line } = merged;
  const priced = priceFor(merged, laid ? laid.count * laid.piece : wanted, own);
  const usual = good.as === 'measure' ? 0 : packFor(wanted, good.packs);
  const piece = laid?.piece ?? (priced.used && good.as !== 'measure' ? priced.used.holds : usual);
  const have = atHand(merged, piece, own);
  const order = ordered(merged, piece, own);
  const beyond = laid ? beyondLaid(laid, wanted, have.ticked) : Math.max(0, wanted - have.amount);
  const whole = bought(beyond, piece);
  const open = bought(order.all ? 0 : Math.max(0, beyond - order.amount), piece);
  const used = priced.used && priceUsed(priced.used);
  return {
    line: {
      ...line,
      shop: priced.used?.entry?.shop ?? good.shop,
      by: good.by,
      scope: good.scope,
      atHand: have.amount,
      ordered: order.amount,
      as: good.as,
      piece,
      pieces: whole.pieces,
      bought: whole.amount,
      open: open.amount,
      openPieces: open.pieces,
      left: Math.max(0, have.amount + order.amount + open.amount - wanted),
      ...(used ? { price: used, cost: costOf(used, whole.amount), openCost: costOf(used, open.amount) } : {}),
    },
    unused: [...priced.unused, ...have.unused, ...order.unused],
  };
}

/** Lengths at hand are laid out already: what the plan takes is beyond them. All of it ticked as at hand is all of it. */
const beyondLaid = ({ count, piece }: Laid, wanted: number, ticked: number): number =>
  ticked >= wanted * (1 - 1e-9) ? 0 : Math.max(0, count * piece - ticked);

/** Whole pieces; sold by measure as much as is asked for, in one. */
function bought(wanted: number, piece: number): { readonly pieces: number; readonly amount: number } {
  const small = wanted <= 1e-9;
  if (small) return { pieces: 0, amount: 0 };
  if (piece <= 0) return { pieces: 1, amount: wanted };
  const pieces = piecesFor(wanted, piece);
  return { pieces, amount: pieces * piece };
}

const priceUsed = ({ path, name, each, holds }: PriceUsed): PriceUsed => ({ path, name, each, holds });

const costOf = ({ each, holds }: PriceUsed, amount: number): Range => {
  const packs = holds > 0 ? amount / holds : 0;
  return { low: each.low * packs, likely: each.likely * packs, high: each.high * packs };
};
