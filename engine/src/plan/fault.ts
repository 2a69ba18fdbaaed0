import type { TradeId } from '@kneewall/project';
import { hashOf } from '@kneewall/project';
import type { Finding } from './finding.ts';
import type { Mark } from './mark.ts';

/** A short name for a fault of ours, the same for the same fault, that can be reported and shows no machine path. */
export function faultOf(thrown: unknown): string {
  const text = thrown instanceof Error ? `${thrown.name}: ${thrown.message}` : String(thrown);
  return hashOf(text).slice(0, 8);
}

/** What stands in for a trade that broke: unknown, never ok. */
export const faultMark = (trade: TradeId): Mark => ({
  id: `${trade}/program-fault`,
  holdPoint: 'decide',
  status: 'unknown',
  consequence: 'harm',
});

export const faultFinding = (trade: TradeId, fault: string): Finding => ({
  ...faultMark(trade),
  trade,
  subject: 'program',
  because: 'fault',
  what: `Kneewall could not work this part out (fault ${fault}).`,
  why: 'The mistake is in the program, not in what you entered. Nothing of this part may be relied on.',
  mend: 'Undo the last change, or report the fault with its number and the project file.',
  source: 'project',
  working: '',
});
