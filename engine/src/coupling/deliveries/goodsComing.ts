import type { QuantityKind } from '@kneewall/project';
import { goodOf } from '../../materials/goods/goodOf.ts';
import { atHand } from '../../materials/list/amounts.ts';
import { comesWith, isCalled, namesOf } from '../../materials/list/comesWith.ts';
import { type Merged, mergedLines } from '../../materials/list/merged.ts';
import { packFor } from '../../materials/list/pieces.ts';
import { amountIn } from '../../materials/list/soldIn.ts';
import type { HoldPoint } from '../../plan/finding.ts';
import type { MaterialLine } from '../../plan/lines.ts';
import type { WorkDelivery, WorkFrame } from '../../schedule/result.ts';

/** Of a good all of whose deliveries say how much they bring: what must come beside what is at hand, and what does. */
export type Counted = {
  readonly id: string;
  readonly what: string;
  readonly kind: QuantityKind;
  readonly wanted: number;
  readonly comes: number;
};

/** A trade's line that is not here yet, the deliveries that it has to wait for, soonest first, and how much they bring. */
export type Coming = {
  readonly trade: MaterialLine['trade'];
  readonly by: HoldPoint;
  readonly with: readonly WorkDelivery[];
  readonly counted?: Counted;
};

const slack = 1e-9;

/**
 * What is bought and not here yet, with the deliveries it comes with: all that name it; where every one of them says how much of it
 * it brings, only the first of them that bring enough together, waste counted and what is at hand taken off.
 */
export function goodsComing(
  lines: readonly MaterialLine[],
  { deliveries, here, stock }: Pick<WorkFrame, 'deliveries' | 'here' | 'stock'>,
): Coming[] {
  const arrived = new Set(here);
  const inShop = new Map(mergedLines(lines).flatMap((m) => m.from.map((x) => [x.id, m] as const)));
  return lines.flatMap((line): Coming[] => {
    if (!(line.amount > 0)) return [];
    const { shop, by } = goodOf(line);
    const id = line.like ? `${line.trade}/${line.like.id}` : line.id;
    const names = namesOf(line);
    const named = comesWith(names, shop, deliveries);
    const merged = inShop.get(line.id);
    const counted = merged && enoughWith(merged, names, named, stock);
    const [own, entry] = [arrived.has(id), line.for !== undefined && arrived.has(line.for)];
    // Where amounts are said, what is at hand was taken off; elsewhere whatever is at hand is all of it.
    const isHere = entry || (own && !(counted && stock.some((s) => s.line === id))) || counted?.with.length === 0;
    return isHere ? [] : [{ trade: line.trade, by, with: named, ...counted }];
  });
}

function enoughWith(
  merged: Merged,
  names: readonly string[],
  named: readonly WorkDelivery[],
  stock: WorkFrame['stock'],
): Pick<Coming, 'with' | 'counted'> | undefined {
  const { id, what, kind, wanted, good } = merged;
  const piece = packFor(wanted, good.packs);
  const brings = named.map((d) => broughtBy(d, names, kind, piece));
  // One that says nothing brings the rest, and nobody knows how much that is.
  if (brings.length === 0 || brings.some((x) => x === undefined)) return undefined;
  const needed = Math.max(0, wanted - atHand(merged, piece, { stock }).amount);
  let comes = 0;
  const waited = named.filter((_, i) => {
    if (comes >= needed * (1 - slack)) return false;
    comes += brings[i] ?? 0;
    return true;
  });
  return { with: waited, counted: { id, what, kind, wanted: needed, comes } };
}

/** How much a delivery says it brings of a thing with these names, in the thing's unit; nothing where it does not say, or not so that it is understood. */
function broughtBy(
  { amounts }: WorkDelivery,
  names: readonly string[],
  kind: QuantityKind,
  piece: number,
): number | undefined {
  const own = amounts.flatMap(({ good, amount }) => (isCalled(good, names) ? [amountIn(amount, kind, piece)] : []));
  const known = own.flatMap((x) => x ?? []);
  return own.length === 0 || known.length < own.length ? undefined : known.reduce((a, x) => a + x, 0);
}
