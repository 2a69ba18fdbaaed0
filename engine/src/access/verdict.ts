import { plannedFor } from './plannedFinding.ts';
import type { Way } from './result.ts';
import { spareWanted } from './spare.ts';

/** Whether a piece passes, at a glance: `barely` with less to spare than hands need; `pending` until it is planned. */
export type Verdict = 'yes' | 'barely' | 'no' | 'pending' | 'unknown';

/** The verdict of closed forms where they are sure, else of motion planning; and m to spare, where that is known. */
export function verdictOf(way: Way): { readonly verdict: Verdict; readonly spare?: number } {
  const { passing, planned, asked, doubt } = way;
  if (!passing.ok || !asked.ok) return { verdict: 'unknown' };
  const closed = passing.value.spare;
  const free = asked.value.passage.headroom;
  const byPlan = plannedFor(way, closed.likely) || (way.kind === 'hatch' && closed.likely >= 0 && free !== undefined);
  // A face turned in the opening's plane is known to closed forms alone.
  const turned = way.kind === 'hatch' && passing.value.pose.through === 'turned';
  const sure = free === undefined || free >= (passing.value.height?.enough ?? 0);
  if (!byPlan || (turned && sure)) return graded(closed.likely, closed.low);
  if (!planned.ok) return sure && way.kind === 'hatch' ? graded(closed.likely, closed.low) : { verdict: 'pending' };
  const { answer, spare } = planned.value;
  if (answer === 'unknown' || turned) return { verdict: 'unknown' };
  if (answer === 'blocked')
    return sure && way.kind === 'hatch'
      ? graded(closed.likely, closed.low)
      : { verdict: 'no', spare: Math.min(0, spare.high) };
  return graded(spare.low, spare.low - doubt);
}

const graded = (likely: number, low: number): { readonly verdict: Verdict; readonly spare: number } => ({
  verdict: likely < 0 ? 'no' : low < spareWanted ? 'barely' : 'yes',
  spare: likely,
});
