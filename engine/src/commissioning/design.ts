import type { TradeInput } from '../plan/trade.ts';
import type { CommissioningResult } from './result.ts';
import { visitsOf } from './visits.ts';

type Input = TradeInput<'climate' | 'loads' | 'equipment' | 'air'>;

/** The visits with what was read at each. Pure. */
export function design({ project, upstream }: Input): CommissioningResult {
  return { ...visitsOf(project, upstream.climate.pressure), workings: {}, wanted: [] };
}
