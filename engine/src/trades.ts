import type { TradeId } from '@kneewall/project';
import { air } from './air/index.ts';
import { circuit } from './circuit/index.ts';
import { climate } from './climate/index.ts';
import { condensate } from './condensate/index.ts';
import { equipment } from './equipment/index.ts';
import { lineset } from './lineset/index.ts';
import { loads } from './loads/index.ts';
import { offgrid } from './offgrid/index.ts';
import type { Trade } from './plan/trade.ts';
import type { TradeResults } from './results.ts';

/** A trade with its own result type forgotten, for code that treats all of them alike. */
export type AnyTrade = Trade<keyof TradeResults, keyof TradeResults>;

/** The trades that are built, in the order in which they need each other. A trade that is not built is absent. */
export const trades: readonly AnyTrade[] = [
  climate,
  loads,
  equipment,
  air,
  condensate,
  lineset,
  circuit,
  offgrid,
] as unknown as readonly AnyTrade[];

export const builtTrades: readonly TradeId[] = trades.map((t) => t.id);
