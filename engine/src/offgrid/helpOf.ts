import type { ChangeKind } from '../coupling/power/helps/change.ts';
import type { Figures } from '../coupling/power/helps/figures.ts';
import type { PlanView } from '../plan/trade.ts';

/** The year that a single change would make, once it is worked out. */
export const helpOf = ({ season: { powerHelps } }: PlanView, kind: ChangeKind): Figures | undefined =>
  powerHelps.ok ? powerHelps.value.ranked.find((h) => h.kind === kind)?.year : undefined;
