import { required } from '../../plan/outcome.ts';
import { type Found, telling } from '../../plan/telling.ts';
import type { LoadsResult } from '../result.ts';

/** A plan this far from its log is better corrected than scaled. Source: `loads.learned-far`. */
const far = { min: 0.67, max: 1.5 };

/** That the plan is scaled by a log, from what to what; and what in it was called measured and cannot be so. */
export function learnedFindings({ learned, heating, lossPerDegree }: LoadsResult): readonly Found[] {
  if (!learned) return [];
  const { times, own, measured } = learned;
  const tell = telling('loads', 'house');
  const scaled = tell(
    {
      id: 'learned-loss',
      holdPoint: 'season',
      consequence: 'comfort',
      kind: 'fraction',
      limit: far,
      source: 'loads.learned-far',
      facts: {
        log: learned.log,
        from: learned.from,
        to: learned.to,
        ...(own.lossPerDegree.ok ? { before: own.lossPerDegree.value.likely } : {}),
        ...(lossPerDegree.ok ? { after: lossPerDegree.value.likely } : {}),
        ...(own.heating.ok ? { heatBefore: own.heating.value.likely } : {}),
        ...(heating.ok ? { heatAfter: heating.value.likely } : {}),
      },
    },
    (rec) => {
      const K_plan = required(own.lossPerDegree).likely;
      rec.step('K_plan', 'table', {}, K_plan, 'W/K', 'loads.transmission');
      rec.step('K', 'f * K_plan', { f: times.likely, K_plan }, times.likely * K_plan, 'W/K', 'loads.learned');
      rec.step('f', 'table', {}, times.likely, '', 'loads.learned');
      return times;
    },
  );
  const agrees = times.low <= 1 && times.high >= 1;
  const against = tell(
    {
      id: 'learned-against',
      holdPoint: 'season',
      consequence: 'money',
      kind: 'count',
      limit: { max: 0 },
      source: 'loads.learned',
      facts: { log: learned.log, paths: measured.join(' ') },
    },
    (rec) => {
      const count = agrees ? 0 : measured.length;
      rec.step('n', 'table', {}, count, '', 'loads.learned');
      return count;
    },
  );
  return [scaled, ...(measured.length > 0 ? [against] : [])];
}
