import { attempt, required, unresolved } from '../../plan/outcome.ts';
import { recordWorking } from '../../plan/working.ts';
import type { Found } from '../found.ts';
import type { AirResult } from '../result.ts';

/** A blower whose table rises somewhere: at how many flows it can run on these ducts. Nothing to say of one that falls. */
export function operatingPointsFinding({ operatingPoints }: AirResult): Found[] {
  if (!operatingPoints) return [];
  const { recorder, steps } = recordWorking();
  const source = 'air.operating-points';
  const value = attempt((): number => {
    const points = required(operatingPoints);
    if (points.length === 0) return unresolved('out-of-range', 'candidates.*.blower.speeds');
    points.forEach((p, i) => {
      recorder.step(`Q_${i + 1}`, 'solved', {}, p.flow, 'm³/s', source);
    });
    recorder.step('N', 'table', {}, points.length, '', source);
    return points.length;
  });
  const points = operatingPoints.ok ? operatingPoints.value : [];
  const facts = points.flatMap((p, i): [string, number][] => [
    [`flow${i}`, p.flow],
    [`pressure${i}`, p.pressure],
    [`steady${i}`, p.steady ? 1 : 0],
  ]);
  return [
    {
      draft: {
        id: 'operating-points',
        subject: 'air handler',
        holdPoint: 'order',
        consequence: 'money',
        kind: 'count',
        value,
        limit: { max: 1 },
        source,
        working: 'air/operating-points',
        facts: { count: points.length, ...Object.fromEntries(facts) },
      },
      working: steps,
    },
  ];
}
