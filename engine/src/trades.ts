import { finders } from './finders.ts';
import type { Trade } from './plan/trade.ts';
import type { TradeResults } from './results.ts';
import { tellers } from './tellers.ts';

/** A trade with its own result type forgotten, for code that treats all of them alike. */
export type AnyTrade = Trade<keyof TradeResults, keyof TradeResults>;

/** The trades that are built, each whole, in the order in which they need each other. */
export const trades: readonly AnyTrade[] = finders.map((finder) => ({ ...finder, ...tellers[finder.id] }));
