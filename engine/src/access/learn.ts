import type { Results } from '../jobs/job.ts';
import type { Outcome } from '../plan/outcome.ts';
import { askedName, eachOnce, passageKind } from './motion/passageJob.ts';
import type { Planned } from './motion/planned.ts';
import type { AccessResult, Way } from './result.ts';

/** Every way with what motion planning found of it, once that is done. */
export function learn(result: AccessResult, found: Results): AccessResult {
  const job = result.wanted.find((j) => j.kind === passageKind && j.key in found);
  if (!job || !result.ways.ok) return result;
  const answers = found[job.key] as readonly Planned[];
  const { places } = eachOnce(result.ways.value.map((w) => w.asked));
  const ways = result.ways.value.map((way): Way => {
    if (!way.asked.ok) return way;
    const planned = answers[places.get(askedName(way.asked.value)) ?? -1];
    return planned ? { ...way, planned: { ok: true, value: planned } satisfies Outcome<Planned> } : way;
  });
  return { ...result, ways: { ok: true, value: ways }, wanted: result.wanted.filter((j) => j !== job) };
}
