import type { Layout, State } from './layout.ts';
import { stepBuilding } from './run.kernel.ts';
import type { WeatherSteps } from './weatherSteps.ts';

/** Sums over a day of what faces and walls' modes were. */
type DaySums = { readonly face1: Float64Array; readonly face2: Float64Array; readonly modes: Float64Array };

/**
 * Takes a building to the day that repeats itself, so many days at most a day at a time. After each day but the first
 * and the last the walls leap: every mode moves by what it still lacks to be at rest with the day's mean faces, so that
 * deep soil need not be waited for. Where a day repeats itself the leap moves nothing: the answer is the same.
 */
export function settleDay(l: Layout, s: State, w: WeatherSteps, days: number): void {
  const sums: DaySums = {
    face1: new Float64Array(l.slabs),
    face2: new Float64Array(l.slabs),
    modes: new Float64Array(l.mode.decay.length),
  };
  for (let day = 0; day < days; day++) {
    for (const sum of Object.values(sums)) sum.fill(0);
    for (let i = 0; i < l.count; i++) {
      stepBuilding(l, s, w, i);
      addTo(sums.face1, s.face1);
      addTo(sums.face2, s.face2);
      addTo(sums.modes, s.modes);
    }
    if (day > 0 && day < days - 1) leap(l, s, sums);
  }
}

function addTo(sum: Float64Array, x: Float64Array): void {
  for (let i = 0; i < x.length; i++) sum[i] = (sum[i] ?? 0) + (x[i] ?? 0);
}

/** Of what a mode lacks, more than all: what stands behind its faces moves along. Found by trying, between 1 and 2. */
const reach = 1.5;

/** A mode at rest between two steady faces holds what it draws in a step over what it loses. */
function leap(l: Layout, s: State, { face1, face2, modes }: DaySums): void {
  const { decay, q1, q2 } = l.mode;
  for (let i = 0; i < l.slabs; i++)
    for (let m = l.slab.firstMode[i] ?? 0; m < (l.slab.firstMode[i + 1] ?? 0); m++) {
      const drawn = (q1[m] ?? 0) * (face1[i] ?? 0) + (q2[m] ?? 0) * (face2[i] ?? 0);
      const lacks = drawn / (1 - (decay[m] ?? 0)) - (modes[m] ?? 0);
      s.modes[m] = (s.modes[m] ?? 0) + (reach * lacks) / l.count;
    }
}
