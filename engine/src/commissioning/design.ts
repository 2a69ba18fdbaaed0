import type { TradeInput } from '../plan/trade.ts';
import { logsOf } from './logs/design.ts';
import type { CommissioningResult } from './result.ts';
import { visitsOf } from './visits.ts';

type Input = TradeInput<'climate' | 'loads' | 'equipment' | 'air'>;

/** The visits with what was read at each. Pure. */
export function design({ project, upstream }: Input): CommissioningResult {
  const { logs, wanted } = logsOf(project, upstream.equipment, upstream.climate.pressure);
  return { ...visitsOf(project, upstream.climate.pressure), logs, workings: {}, wanted };
}
