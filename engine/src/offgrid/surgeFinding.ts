import { attempt, required, unresolved } from '../plan/outcome.ts';
import { scenario } from '../plan/scenario.ts';
import type { PlanView } from '../plan/trade.ts';
import { type Found, found } from './draftOf.ts';

/** W for the seconds in which compressor and pump start while all else runs. */
export function surge({ project, trades }: PlanView): Found {
  const s = scenario();
  const source = 'offgrid.surge';
  const { power } = project;
  const most = attempt(() => s.of(power.inverter.surge));
  const of = { id: 'surge', holdPoint: 'order', consequence: 'money', kind: 'electric-power' } as const;
  const pump = s.maybe(power.household.pumpStart);
  const facts = pump === undefined ? {} : { pump };
  return found({ ...of, limit: most.ok ? { max: most.value } : {}, source, facts }, (recorder) => {
    required(most);
    const chosen = trades.equipment?.chosen ?? { ok: false, because: 'fault', paths: [] };
    const { powerMost, startCurrent, voltage } =
      project.candidates[required(chosen)]?.electrics ?? unresolved('missing', 'candidates');
    if ('missing' in powerMost || 'missing' in power.otherLoad) return unresolved('missing', powerMost.path);
    const amps = s.maybe(startCurrent);
    const starting = amps === undefined ? 0 : amps * s.of(voltage);
    const pumpMore = Math.max(0, (pump ?? 0) - (s.maybe(power.household.pump) ?? 0));
    const unit = Math.max(powerMost.likely, starting);
    recorder.given('P_most', powerMost);
    recorder.step('P_start', 'table', {}, starting, 'W', source);
    recorder.given('P_other', power.otherLoad);
    recorder.step('P_pump', 'table', {}, pumpMore, 'W', source);
    const likely = unit + power.otherLoad.likely + pumpMore;
    recorder.step(
      'P',
      'max(P_most, P_start) + P_other + P_pump',
      { P_most: powerMost.likely, P_start: starting, P_other: power.otherLoad.likely, P_pump: pumpMore },
      likely,
      'W',
      source,
    );
    return {
      low: Math.max(powerMost.low, starting) + power.otherLoad.low + pumpMore,
      likely,
      high: Math.max(powerMost.high, starting) + power.otherLoad.high + pumpMore,
    };
  });
}
