import type { DispatchHouse } from '../../physics/dispatch/index.ts';

/** How a room answers to more heat, hour by hour, and how well that follows the house itself. */
export type HouseAnswer = Pick<DispatchHouse, 'atOnce' | 'gain' | 'left'> & {
  /** Hours in which the mass fades to 1/e. */
  readonly fades: number;
  /** K of the room's stray that the fit leaves, and that there is: root mean squares. */
  readonly missed: number;
  readonly stray: number;
};

/** Hours of fading that are tried, each a tenth more than the last. */
const fadings = Array.from({ length: 46 }, (_, i) => 2 * 1.1 ** i);

/**
 * Air and one mass fitted to what a year strays from another when its set points do: kWh more heat in an hour against
 * K of the room, in the hours that `counts` marks. Least squares; no part below zero, so that more heat never cools.
 */
export function fitHouse(heat: Float64Array, room: Float64Array, counts: (hour: number) => boolean): HouseAnswer {
  const used = [...room.keys()].filter(counts);
  const stray = Math.sqrt(used.reduce((a, t) => a + (room[t] ?? 0) ** 2, 0) / Math.max(1, used.length));
  const tried = fadings.map((fades) => {
    const left = Math.exp(-1 / fades);
    return { fades, left, stray, ...leastSquares(heat, faded(heat, left), room, used) };
  });
  const first = tried[0] ?? { fades: 1, left: 0, stray, atOnce: 0, gain: 0, missed: stray };
  return tried.reduce((a, b) => (b.missed < a.missed ? b : a), first);
}

/** What is left of all heat so far, each hour keeping so much of it. */
function faded(heat: Float64Array, kept: number): Float64Array {
  let z = 0;
  return heat.map((q) => {
    z = kept * z + q;
    return z;
  });
}

type Parts = Pick<HouseAnswer, 'atOnce' | 'gain' | 'missed'>;

/** The parts of two columns that come nearest to the room. */
function leastSquares(now: Float64Array, mass: Float64Array, room: Float64Array, used: readonly number[]): Parts {
  let [nn, nm, mm, nr, mr, rr] = [0, 0, 0, 0, 0, 0];
  for (const t of used) {
    const [x, y, z] = [now[t] ?? 0, mass[t] ?? 0, room[t] ?? 0];
    nn += x * x;
    nm += x * y;
    mm += y * y;
    nr += x * z;
    mr += y * z;
    rr += z * z;
  }
  const determinant = nn * mm - nm * nm || 1;
  let atOnce = (nr * mm - mr * nm) / determinant;
  let gain = (nn * mr - nm * nr) / determinant;
  if (atOnce < 0) [atOnce, gain] = [0, Math.max(0, mr / (mm || 1))];
  if (gain < 0) [atOnce, gain] = [Math.max(0, nr / (nn || 1)), 0];
  const missed = rr - 2 * (atOnce * nr + gain * mr) + atOnce * atOnce * nn + 2 * atOnce * gain * nm + gain * gain * mm;
  return { atOnce, gain, missed: Math.sqrt(Math.max(0, missed) / Math.max(1, used.length)) };
}
