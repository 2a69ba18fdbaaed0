import type { MaterialLine, PanelPiece, StraightPiece } from '../../plan/lines.ts';
import type { Laid } from '../cutting/laid.ts';
import type { Good } from '../goods/good.ts';
import { goodOf } from '../goods/goodOf.ts';
import type { ListLine, Source } from '../result.ts';

/** What the trades need of one thing, before anything at hand or ordered is looked at. */
export type Merged = Pick<ListLine, 'id' | 'what' | 'kind' | 'from' | 'need' | 'waste' | 'wasteShare'> & {
  readonly good: Good;
  /** What its lines are alike in, where they say so. */
  readonly like?: string;
  /** What it takes with waste. */
  readonly wanted: number;
  /** Straight pieces that it is cut into, of all lines. */
  readonly pieces?: readonly StraightPiece[];
  /** Pieces that it is cut into from sheets `thickness` m thick, of all lines. */
  readonly panels?: { readonly thickness: number; readonly pieces: readonly PanelPiece[] };
  /** How the cut plan lays it out, where it does. */
  readonly laid?: Laid;
};

/**
 * One line for each thing: lines that are alike in the shop are added up, a thing that two trades name is taken once and
 * the most of it, and lines of nothing are left out. In the order in which the trades name them.
 */
export function mergedLines(lines: readonly MaterialLine[]): Merged[] {
  const heaps = new Map<string, MaterialLine[]>();
  for (const line of lines) {
    if (!(line.amount > 0)) continue;
    const key = keyOf(line);
    heaps.set(key, [...(heaps.get(key) ?? []), line]);
  }
  return [...heaps.values()].flatMap((heap) => mergedHeap(heap) ?? []);
}

/** What is laid out piece by piece wastes no share of its length: what is cut off stands on the cut list. */
export const asLaid = (line: Merged, laid: Laid | undefined): Merged =>
  laid ? { ...line, laid, waste: 0, wasteShare: 0, wanted: line.need } : line;

const keyOf = (line: MaterialLine): string => {
  const { same } = goodOf(line);
  if (same !== undefined) return `same ${same}`;
  return line.like ? `${line.like.id}|${line.kind}` : line.id;
};

function mergedHeap(heap: readonly MaterialLine[]): Merged | undefined {
  const [first] = heap;
  if (!first) return undefined;
  const good = goodOf(first);
  const most = heap.reduce((a, l) => (l.amount > a.amount ? l : a));
  const taken = good.same === undefined ? heap : [most];
  const need = taken.reduce((sum, l) => sum + l.amount, 0);
  const waste = taken.reduce((sum, l) => sum + wasteOf(l, good), 0);
  return {
    id: first.like ? `${first.trade}/${first.like.id}` : first.id,
    what: first.like?.what ?? first.what,
    ...(first.like ? { like: first.like.id } : {}),
    kind: first.kind,
    from: heap.map(sourceOf),
    need,
    waste,
    wasteShare: good.waste.share,
    wanted: need + waste,
    ...(taken.every((l) => l.pieces) ? { pieces: taken.flatMap((l) => l.pieces ?? []) } : {}),
    ...(first.panels ? { panels: { ...first.panels, pieces: taken.flatMap((l) => l.panels?.pieces ?? []) } } : {}),
    good,
  };
}

/** What a line of a trade allows for waste, in its own unit. */
export const wasteOf = ({ amount }: Pick<MaterialLine, 'amount'>, { waste }: Good): number =>
  Math.max(amount * waste.share, waste.least ?? 0);

const sourceOf = (l: MaterialLine): Source => ({
  id: l.id,
  trade: l.trade,
  what: l.what,
  amount: l.amount,
  ...(l.for === undefined ? {} : { for: l.for }),
});
