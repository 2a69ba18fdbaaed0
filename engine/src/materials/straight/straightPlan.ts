import { cutBars } from '../../physics/cutting/index.ts';
import type { StraightPiece } from '../../plan/lines.ts';
import type { Merged } from '../list/merged.ts';
import { amountIn } from '../list/soldIn.ts';
import type { Own, Stock } from '../result.ts';
import type { StraightPlan } from './result.ts';

/** m of a length worth keeping, and how long the search may be: some dozens of pieces are settled in far fewer. */
const keepLeast = 0.3;
const nodesMost = 200;

type Laying = { readonly merged: Merged; readonly lengths: readonly number[]; readonly own: Own };

/**
 * The straight pieces of a line on the lengths that shops sell, the fewest metres bought, saw cuts counted and what is at hand
 * first. A piece longer than any length is joined where lengths end. Source: `materials.straight`.
 */
export function straightPlan({ merged, lengths, own }: Laying): StraightPlan | undefined {
  const { id, what, pieces } = merged;
  const longest = Math.max(0, ...lengths);
  if (!pieces || !(longest > 0)) return undefined;
  const cut = pieces.flatMap((p, i) => partsOf(p, longest).map((x, k) => ({ ...x, id: `${i} ${k}` })));
  const soldIds = lengths.map((_, i) => `sold ${i}`);
  const plan = cutBars({
    pieces: cut.map(({ id: own, length, count }) => ({ id: own, length, count })),
    stock: [
      ...lengths.map((length, i) => ({ id: `sold ${i}`, length, cost: length })),
      ...handOf(merged, longest, own.stock),
    ],
    kerf: own.saw,
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

/** A piece as it is cut: whole lengths and a rest where it is longer than they are. Couplings and joints lie where lengths end. */
function partsOf({ name, length, count }: StraightPiece, longest: number): StraightPiece[] {
  const whole = Math.max(0, Math.ceil(length / longest - 1e-9) - 1);
  const rest = length - whole * longest;
  return [
    ...(whole > 0 ? [{ name, length: longest, count: whole * count }] : []),
    ...(count > 0 && rest > 0 ? [{ name, length: rest, count }] : []),
  ];
}

/** Lengths at hand that are entered for this line, for one of its lengths, or under its name. */
const handOf = ({ id, what }: Merged, longest: number, stock: readonly Stock[]) =>
  stock.flatMap(({ path, name, line, duct, each, amount }) => {
    // A line for one length of several ends in its millimetres.
    const ofLength = line?.startsWith(`${id} `) ? Number(line.slice(id.length + 1)) / 1000 : undefined;
    if (line !== id && ofLength === undefined && (line !== undefined || duct !== undefined || name !== what)) return [];
    const one = each ?? ofLength;
    const length = one ?? amountIn(amount ?? '', 'length', longest) ?? 0;
    const count = one === undefined || amount === undefined ? 1 : Math.floor(amountIn(amount, 'count', 1) ?? 0);
    return length > 0 && count > 0 ? [{ id: path, length, count, cost: 0 }] : [];
  });
