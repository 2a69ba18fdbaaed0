import type { Range, ResolvedProject } from '@kneewall/project';
import type { Cost } from '../materials/result.ts';
import type { QuoteScope } from '../paperwork/result.ts';
import { attempt, type Outcome, unresolved } from '../plan/outcome.ts';

/** The job done by oneself, at the scope that quotes are brought to. Money; own hours are not counted. */
export type OwnJob = {
  /** What the shopping list costs, less what somebody hired brings along. */
  readonly bought: Range;
  /** Lines of it without a price: the total is then too low. */
  readonly unpriced: number;
  /** What is paid to others all the same. */
  readonly hired: readonly QuoteScope[];
  readonly total: Outcome<Range>;
};

/**
 * What it comes to where the owner does what may be done: the list, and removal, permit, and wires and first start unless it
 * was answered that one does them oneself. Prices are independent: ranges join as the root of the sum of squares.
 */
export function ownJob(cost: Cost, { hands, scopePrices }: ResolvedProject['work']): OwnJob {
  const ours = (who: (typeof hands)['electrical']): boolean => 'choice' in who && who.choice === 'us';
  const wires = ours(hands.electrical);
  const hired = [
    ...(wires ? [] : (['electrical'] as const)),
    ...(['removal', 'permit'] as const),
    ...(ours(hands.startUp) ? [] : (['startUp'] as const)),
  ];
  const kept = Object.entries(cost.scopes).flatMap(([scope, of]) => (scope === 'electrical' && !wires ? [] : [of]));
  const bought = joined(kept);
  return {
    bought,
    unpriced: kept.reduce((sum, of) => sum + of.unpriced, 0),
    hired,
    total: attempt(() => {
      const prices = hired.map((scope) => {
        const price = scopePrices[scope];
        return 'missing' in price ? unresolved('missing', price.path) : price;
      });
      return joined([bought, ...prices]);
    }),
  };
}

function joined(parts: readonly Range[]): Range {
  const likely = parts.reduce((sum, p) => sum + p.likely, 0);
  const off = (side: 'low' | 'high') => Math.hypot(...parts.map((p) => p[side] - p.likely));
  return { low: likely - off('low'), likely, high: likely + off('high') };
}
