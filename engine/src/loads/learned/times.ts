import type { ResolvedProject } from '@kneewall/project';
import { type Scenario, scenario } from '../../plan/scenario.ts';

type Learned = Pick<ResolvedProject['house'], 'learned'>;

/**
 * How many times its own loss a house has by what its owner took from a log; 1 where nothing was taken. The one place
 * that says so. `own` is the house's own loss in a scenario, in any unit. A log measures the whole: where its share is
 * known as a range, a wall that is worse than likely leaves less to the others, and the whole stays as measured. A
 * plain number only scales. Source: `loads.learned`.
 */
export function learnedTimes({ learned }: Learned, s: Scenario, own: (s: Scenario) => number): number {
  const { loss } = learned;
  if ('missing' in loss) return 1;
  const times = s.of(loss);
  return loss.low < loss.high ? (times * own(scenario())) / own(s) : times;
}
