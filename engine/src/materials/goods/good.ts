import type { HoldPoint } from '../../plan/finding.ts';
import type { Scope, Shop, SoldAs } from '../result.ts';

/** Allowed for waste: a share of the need, and no less than so much for each line of a trade (two ends of a cable). */
export type Waste = { readonly share: number; readonly least?: number };

/** What is known of a kind of thing in shops. Local prices and packs stand before all of it. */
export type Good = {
  readonly shop: Shop;
  /** The hold point before which it must be there. */
  readonly by: HoldPoint;
  readonly scope: Scope;
  readonly waste: Waste;
  readonly as: SoldAs;
  /** Sizes of a pack in the unit of the line, smallest first; without any it is sold by measure. */
  readonly packs: readonly number[];
  /**
   * Where a piece longer than a length may be joined: where lengths end (pipe, with couplings), nowhere (what carries
   * people), or anywhere (foam, butted and taped). Left out: where lengths end.
   */
  readonly joints?: 'none' | 'anywhere';
  /** How a price file is likely to call it, in small letters. */
  readonly names: readonly string[];
  /** Named by two trades and still one thing: the most of them is bought, not the sum. */
  readonly same?: string;
  /** It is the document entry it is for: an item of that entry is this very thing, and what the entry costs is its price. */
  readonly itself?: true;
};
