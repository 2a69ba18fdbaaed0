import type { Layout, State } from './layout.ts';
import { stepBuilding } from './run.kernel.ts';
import { face1, face2, known1, known2, mode, modeSlots, q1, q2, slabSlots } from './slabSlots.ts';
import type { WeatherSteps } from './weatherSteps.ts';

/** Sums over a day of what faces and walls' modes were. */
type DaySums = { readonly faces: Float64Array; readonly modes: Float64Array };

/**
 * Takes a building to the day that repeats itself, so many days at most a day at a time. After each day but the first
 * and the last the walls leap: every mode moves by what it still lacks to be at rest with the day's mean faces, so that
 * deep soil need not be waited for. Where a day repeats itself the leap moves nothing: the answer is the same.
 */
export function settleDay(l: Layout, s: State, w: WeatherSteps, days: number): void {
  const sums: DaySums = {
    faces: new Float64Array(2 * l.slabs),
    modes: new Float64Array(l.mode.decay.length),
  };
  for (let day = 0; day < days; day++) {
    for (const sum of Object.values(sums)) sum.fill(0);
    for (let i = 0; i < l.count; i++) {
      stepBuilding(l, s, w, i);
      addDay(sums, s);
    }
    if (day > 0 && day < days - 1) leap(l, s, sums);
  }
}

function addDay({ faces, modes }: DaySums, s: State): void {
  for (let i = 0; i < faces.length; i += 2) {
    const at = (i / 2) * slabSlots;
    faces[i] = (faces[i] ?? 0) + (s.slab[at + face1] ?? 0);
    faces[i + 1] = (faces[i + 1] ?? 0) + (s.slab[at + face2] ?? 0);
  }
  for (let m = 0; m < modes.length; m++) modes[m] = (modes[m] ?? 0) + (s.modes[m * modeSlots + mode] ?? 0);
}

/** Of what a mode lacks, more than all: what stands behind its faces moves along. Found by trying, between 1 and 2. */
const reach = 1.5;

/** A mode at rest between two steady faces holds what it draws in a step over what it loses. */
function leap(l: Layout, s: State, { faces, modes }: DaySums): void {
  const { mode: of, slab } = l;
  for (let i = 0; i < l.slabs; i++)
    for (let m = slab.firstMode[i] ?? 0; m < (slab.firstMode[i + 1] ?? 0); m++) {
      const drawn = (of.q1[m] ?? 0) * (faces[2 * i] ?? 0) + (of.q2[m] ?? 0) * (faces[2 * i + 1] ?? 0);
      const lacks = drawn / (1 - (of.decay[m] ?? 0)) - (modes[m] ?? 0);
      moveMode(s, i, m, (reach * lacks) / l.count);
    }
}

/** Moves a mode of a slab, and with it what the slab's past gives its faces. */
function moveMode({ slab, modes }: State, i: number, m: number, by: number): void {
  const at = m * modeSlots;
  const of = i * slabSlots;
  modes[at + mode] = (modes[at + mode] ?? 0) + by;
  slab[of + known1] = (slab[of + known1] ?? 0) + (modes[at + q1] ?? 0) * by;
  slab[of + known2] = (slab[of + known2] ?? 0) + (modes[at + q2] ?? 0) * by;
}
