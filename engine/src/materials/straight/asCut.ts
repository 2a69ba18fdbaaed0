import type { Merged } from '../list/merged.ts';
import { priceFor } from '../list/priceFor.ts';
import { amountWords } from '../listWords.ts';
import type { Own } from '../result.ts';
import type { StraightPlan, TooLong } from './result.ts';
import { straightPlan } from './straightPlan.ts';
import { tooLong } from './tooLong.ts';

/** m from which a price is for a length, and not for a foot or a metre of it. */
const lengthLeast = 1.5;

/** Lines of the list with their straight pieces laid on lengths: a line for each length that is bought, and the plans. */
export function asCut(
  lines: readonly Merged[],
  own: Own,
): {
  readonly lines: readonly Merged[];
  readonly straight: readonly StraightPlan[];
  readonly tooLong: readonly TooLong[];
} {
  const made = lines.map((merged) => {
    const lengths = merged.pieces ? lengthsFor(merged, own) : [];
    const plan = lengths.length > 0 ? straightPlan({ merged, lengths, own }) : undefined;
    // What could not be laid stays a length with its waste.
    const good = plan && plan.plan.problems.length === 0 && plan.plan.leftOut.length === 0 ? plan : undefined;
    const long = good ? [] : tooLong(merged, lengths);
    return { plan: good, long, lines: good ? boughtAs(merged, good) : [merged] };
  });
  return {
    lines: made.flatMap((m) => m.lines),
    straight: made.flatMap((m) => m.plan ?? []),
    tooLong: made.flatMap((m) => m.long),
  };
}

/** A length with a price stands before the usual ones. */
function lengthsFor(merged: Merged, own: Own): readonly number[] {
  const { packs } = merged.good;
  if (packs.length > 1) return packs;
  const priced = priceFor(merged, merged.need, own).used?.holds;
  return priced !== undefined && priced >= lengthLeast ? [priced] : packs;
}

function boughtAs(merged: Merged, { plan, sold }: StraightPlan): Merged[] {
  const lengths = Object.entries(sold);
  const countOf = (id: string) => plan.bars.filter((b) => b.stock === id).length;
  const [one] = lengths;
  const plain = { ...merged, waste: 0, wasteShare: 0, wanted: merged.need };
  if (lengths.length === 1 && one) return [{ ...plain, laid: { piece: one[1], count: countOf(one[0]) } }];
  return lengths.flatMap(([id, length]): Merged[] => {
    const bars = plan.bars.filter((b) => b.stock === id);
    if (bars.length === 0) return [];
    const need = bars.reduce((a, b) => a + b.pieces.reduce((sum, p) => sum + p.length, 0), 0);
    const size = `${amountWords(length, 'length', 'us')} (${amountWords(length, 'length', 'si')})`;
    return [
      {
        ...plain,
        id: `${merged.id} ${Math.round(length * 1000)}`,
        what: `${merged.what}: lengths of ${size}`,
        need,
        wanted: need,
        good: { ...merged.good, packs: [length] },
        laid: { piece: length, count: bars.length },
      },
    ];
  });
}
