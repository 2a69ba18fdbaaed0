import type { TradeId } from '@kneewall/project';
import { accessFinder } from './access/finder.ts';
import { airFinder } from './air/finder.ts';
import { circuitFinder } from './circuit/finder.ts';
import { climateFinder } from './climate/finder.ts';
import { commissioningFinder } from './commissioning/finder.ts';
import { condensateFinder } from './condensate/finder.ts';
import { equipmentFinder } from './equipment/finder.ts';
import { linesetFinder } from './lineset/finder.ts';
import { loadsFinder } from './loads/finder.ts';
import { offgridFinder } from './offgrid/finder.ts';
import type { Finder } from './plan/trade.ts';
import type { TradeResults } from './results.ts';
import { scheduleFinder } from './schedule/finder.ts';

/** A finder with its own result type forgotten, for code that treats all of them alike. */
export type AnyFinder = Finder<keyof TradeResults, keyof TradeResults>;

/** What the built trades find with, in the order in which they need each other. A trade that is not built is absent. */
export const finders: readonly AnyFinder[] = [
  climateFinder,
  loadsFinder,
  equipmentFinder,
  airFinder,
  condensateFinder,
  linesetFinder,
  circuitFinder,
  offgridFinder,
  accessFinder,
  scheduleFinder,
  commissioningFinder,
] as unknown as readonly AnyFinder[];

export const builtTrades: readonly TradeId[] = finders.map((f) => f.id);
