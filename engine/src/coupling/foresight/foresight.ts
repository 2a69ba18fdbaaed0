import type { WeatherYear } from '../../climate/weather/weatherYear.ts';
import type { Dispatch, LinearSolver } from '../../physics/dispatch/index.ts';
import { attempt, type Outcome, unresolved } from '../../plan/outcome.ts';
import { powerRuns } from '../power/powerRun.ts';
import type { PowerYearInputs } from '../power/powerYearJob.ts';
import { comfortBand } from './comfort.ts';
import { controlRunCount, controlRuns, ranWay } from './controlRuns.ts';
import { dispatchOf, heatAsItIs } from './dispatchOf.ts';
import type { ControlWay, Foresight } from './foresightAnswers.ts';
import { type Least, leastOf } from './leastOf.ts';
import { ruleNumbers } from './simpleRule.ts';

/** Runs that the two programmes last as long as, roughly: for telling how far the work is. */
const lasts = { timing: 6, best: 10 } as const;

/**
 * The year on one's own power by other ways of control: simple rules in house, unit and power themselves, and the least
 * that any control could burn with the whole year known. The stove is left out of all of them. `tell` hears parts of
 * the whole. Not found where the solver stops or our own check of its answer does not hold.
 */
export function foresight(
  { power: { stove: _stove, ...power }, ...rest }: PowerYearInputs,
  year: WeatherYear,
  solve: LinearSolver,
  tell: (done: number, total: number) => void,
): Outcome<Foresight> {
  const inputs = { ...rest, power };
  const ready = powerRuns(inputs, year);
  const { steps } = ready;
  const total = (controlRunCount + lasts.timing + lasts.best) * steps;
  const runs = controlRuns(ready, (done) => tell(done, total));
  const dispatch = dispatchOf(inputs, runs, ready);
  const floor = dispatch.house?.low ?? new Float64Array(dispatch.steps);
  const ran = [{ id: 'as-set' as const, run: runs.asSet }, ...runs.others].map(({ id, run }) =>
    ranWay(id, run, { unlimited: runs.unlimited, floor }, inputs),
  );
  const least = (d: Dispatch, before: number, of: number): Least =>
    leastOf(d, solve, (share) => tell((before + share * of) * steps, total)) ?? unresolved('not-converged');
  return attempt((): Foresight => {
    const timing = least(heatAsItIs(dispatch), controlRunCount, lasts.timing);
    const best = least(dispatch, controlRunCount + lasts.timing, lasts.best);
    const { gap, miss, holds } = best.certificate;
    const { fades, missed, stray } = runs.house;
    return {
      of: power.generator ? 'fuel' : 'cold',
      ways: [...ran, bounded('timing', timing), bounded('best', best)],
      certificate: { gap, miss, holds },
      band: comfortBand,
      rule: { ahead: ruleNumbers.ahead, cooler: comfortBand.cooler, restAt: ruleNumbers.restAt },
      house: { fades, missed, stray },
    };
  });
}

const bounded = (id: ControlWay['id'], { litres, cold, short }: Least): ControlWay => ({ id, litres, cold, short });
