import { cutBars } from '../../physics/cutting/index.ts';
import type { Merged } from '../list/merged.ts';
import { amountIn } from '../list/soldIn.ts';
import type { Own, Stock } from '../result.ts';
import { partsOf } from './partsOf.ts';
import type { StraightPlan } from './result.ts';

/** m of a length worth keeping, and how long the search may be: some dozens of pieces are settled in far fewer. */
const keepLeast = 0.3;
const nodesMost = 200;

type Laying = { readonly merged: Merged; readonly lengths: readonly number[]; readonly own: Own };

/**
 * The straight pieces of a line on the lengths that shops sell, the fewest metres bought, saw cuts counted and what is at hand
 * first. Where pieces may be joined is the good's. Source: `materials.straight`.
 */
export function straightPlan({ merged, lengths, own }: Laying): StraightPlan | undefined {
  const { id, what, pieces } = merged;
  const longest = Math.max(0, ...lengths);
  if (!pieces || !(longest > 0)) return undefined;
  const hand = handOf(merged, own.stock);
  const { joints } = merged.good;
  const atHand = hand.flatMap((h) => new Array<number>(h.count).fill(h.length));
  const cut = partsOf(pieces, joints, { longest, atHand }).map((x, i) => ({ ...x, id: `${i}` }));
  const soldIds = lengths.map((_, i) => `sold ${i}`);
  const plan = cutBars({
    pieces: cut.map(({ id: own, length, count }) => ({ id: own, length, count })),
    stock: [...lengths.map((length, i) => ({ id: `sold ${i}`, length, cost: length })), ...hand],
    // Foam is cut with a knife.
    kerf: joints === 'anywhere' ? 0 : own.saw,
    remnantLeast: keepLeast,
    nodesMost,
  });
  return {
    id,
    what,
    plan,
    names: {
      ...Object.fromEntries(cut.map((x) => [x.id, x.name])),
      ...Object.fromEntries(own.stock.map((s) => [s.path, s.name])),
    },
    sold: Object.fromEntries(soldIds.map((s, i) => [s, lengths[i] ?? 0])),
  };
}

/** Pieces at hand whose length is entered, for this line, for one of its lengths, or under its name. */
const handOf = ({ id, what }: Merged, stock: readonly Stock[]) =>
  stock.flatMap(({ path, name, line, duct, each, amount }) => {
    const mine = line === undefined ? duct === undefined && name === what : line === id || line.startsWith(`${id} `);
    const count = amount === undefined ? 1 : Math.floor(amountIn(amount, 'count', 1) ?? 0);
    return mine && each !== undefined && each > 0 && count > 0 ? [{ id: path, length: each, count, cost: 0 }] : [];
  });
