import type { TradeId } from '@kneewall/project';
import { commissioningFinder } from './commissioning/finder.ts';
import { lifeCost } from './coupling/lifeCost/lifeCost.ts';
import type { FoundWith } from './find.ts';
import { firstFinders } from './firstFinders.ts';
import type { AnyFinder } from './judgeOne.ts';
import { materialsFinder } from './materials/finder.ts';
import { paperworkFinder } from './paperwork/finder.ts';
import { scheduleFinder } from './schedule/finder.ts';

const lateFinders = [materialsFinder, paperworkFinder, scheduleFinder, commissioningFinder];

/** What the built trades find with, in the order in which they need each other. A trade that is not built is absent. */
export const finders: readonly AnyFinder[] = [
  ...firstFinders.finders,
  ...(lateFinders as unknown as readonly AnyFinder[]),
];

export const allFinders: FoundWith = { finders, lifeCost };

export const builtTrades: readonly TradeId[] = finders.map((f) => f.id);
