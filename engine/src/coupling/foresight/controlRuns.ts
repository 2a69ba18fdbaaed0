import { generatorYear } from '../power/generatorYear.ts';
import type { ReadyRuns } from '../power/powerRun.ts';
import type { PowerYearInputs } from '../power/powerYearJob.ts';
import type { PowerRun, PowerWay, RunWith } from '../power/runWay.ts';
import { comfortBand } from './comfort.ts';
import { fitHouse, type HouseAnswer } from './fitHouse.ts';
import type { ControlWay } from './foresightAnswers.ts';
import { hourlyRun } from './hourly.ts';
import { simpleRule } from './simpleRule.ts';
import { strayingSetPoints } from './strayingSetPoints.ts';

/** Runs of house, unit and power in one loop, by one way of control after another. */
export type ControlRuns = {
  readonly unlimited: PowerRun;
  readonly asSet: PowerRun;
  /** The house as it answers to heat, fitted to the year in which its set points strayed. */
  readonly house: HouseAnswer;
  readonly others: readonly { readonly id: ControlWay['id']; readonly run: PowerRun }[];
};

/** Years that are run here. */
export const controlRunCount = 6;

/** All runs. `tell` hears steps of all of them. */
export function controlRuns({ run, steps }: ReadyRuns, tell: (done: number) => void): ControlRuns {
  let before = 0;
  const next = (way: PowerWay, moved?: RunWith): PowerRun => {
    const made = run(way, (done) => tell(before + done), moved);
    before += steps;
    return made;
  };
  // In this order: as long as nothing is held back, the second is the first.
  const asSet = next('with-generator');
  const unlimited = next('unlimited');
  const strayed = next('unlimited', { raised: strayingSetPoints(steps, Math.round(1 / unlimited.hours)) });
  const byRule = { goodForecast: simpleRule(unlimited, 'good'), likeToday: simpleRule(unlimited, 'like-today') };
  return {
    unlimited,
    house: fitRuns(unlimited, strayed),
    asSet,
    others: [
      { id: 'cooler', run: next('with-generator', { raised: new Float64Array(steps).fill(-comfortBand.cooler) }) },
      { id: 'rule-like-today', run: next('with-generator', { rule: byRule.likeToday }) },
      { id: 'rule', run: next('with-generator', { rule: byRule.goodForecast }) },
    ],
  };
}

/** The house's answer, from hours in which it is heated. */
function fitRuns(unlimited: PowerRun, strayed: PowerRun): HouseAnswer {
  const [as, other] = [hourlyRun(unlimited), hourlyRun(strayed)];
  const less = (a: Float64Array, b: Float64Array): Float64Array => a.map((x, i) => x - (b[i] ?? 0));
  return fitHouse(less(other.heat, as.heat), less(other.room, as.room), (t) => (as.heat[t] ?? 0) > 0);
}

/** What a run comes to; cold is counted against the floor of each hour, K from the unlimited year. */
export function ranWay(
  id: ControlWay['id'],
  run: PowerRun,
  { unlimited, floor }: { readonly unlimited: PowerRun; readonly floor: Float64Array },
  { power: { generator } }: PowerYearInputs,
): ControlWay {
  const [made, reference] = [hourlyRun(run), hourlyRun(unlimited)];
  const cold = floor.reduce((sum, k, t) => sum + Math.max(0, (reference.room[t] ?? 0) + k - (made.room[t] ?? 0)), 0);
  const short = made.short.reduce((a, b) => a + b, 0);
  const year = generator && generatorYear(generator, run);
  return { id, litres: year?.litres ?? 0, ...(year ? { hours: year.hours } : {}), cold, short };
}
