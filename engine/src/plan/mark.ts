import type { TradeId } from '@kneewall/project';
import type { Finding } from './finding.ts';
import type { Judged } from './judge.ts';

/** How a finding stands and where it counts: all that can be said of it before there are words for it. */
export type Mark = Pick<Finding, 'id' | 'holdPoint' | 'status' | 'consequence'>;

export const markOf = (trade: TradeId, { id, holdPoint, status, consequence }: Judged): Mark => ({
  id: `${trade}/${id}`,
  holdPoint,
  status,
  consequence,
});
