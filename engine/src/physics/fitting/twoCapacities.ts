import { inverse, Matrix } from 'ml-matrix';
import { percentiles } from '../sampling/index.ts';
import { seeded } from '../schedule/seeded.ts';
import { blockOf, drawDays } from './dayBlocks.ts';
import type { Interval } from './houseLoss.ts';
import { marquardt, type Searched } from './marquardt.ts';
import { heatOfHours } from './twoCapacities.kernel.ts';

/** A log by the hour: °C, W, W/m², m/s. `fresh` 1 where a row follows a gap; `counts` 1 where its heat is to be met. */
export type HouseHours = {
  readonly outdoor: Float64Array;
  readonly indoor: Float64Array;
  /** Indoors at the end of each hour. */
  readonly ends: Float64Array;
  readonly heat: Float64Array;
  readonly sun?: Float64Array;
  readonly wind?: Float64Array;
  /** Days from 1970, whole and broken. */
  readonly day: Float64Array;
  readonly fresh: Uint8Array;
  readonly counts: Uint8Array;
};

/** What only guesses say before the log is heard: name, middle and standard deviation in the search's own scale. */
const guessed = ['through-mass', 'mass-place', 'air-capacity', 'mass-memory'] as const;
export type Guessed = (typeof guessed)[number];
const guesses: readonly (readonly [number, number])[] = [
  [0, 1.5],
  [0.7, 1.5],
  [0, 1],
  [0, 1],
];

export type TwoCapacities = {
  readonly lossPerDegree: Interval;
  /** m² (or W/W) of sun that ends up as heat in the house. */
  readonly aperture?: Interval;
  /** Hours in which the house, left alone, has lost all but e⁻¹ of its warmth; and the same of its air alone. */
  readonly slowHours: Interval;
  readonly fastHours: Interval;
  /** J/K of the air and what warms with it, and of the mass. */
  readonly air: number;
  readonly mass: number;
  /** Which of the guessed numbers the log hardly narrowed: the guess still speaks there. */
  readonly unlearned: readonly Guessed[];
  /** W, root of the mean square of what is not met. */
  readonly miss: number;
  readonly settled: boolean;
};

const hour = 3600;
const draws = 200;

/**
 * Fits a house of two heat capacities to a log by the hour, by Levenberg and Marquardt: loss, where the mass stands, both capacities,
 * sun, other gains, wind, drifts of the season. Weak guesses hold what the log does not say, and are named. Intervals from days drawn
 * again in blocks, a Newton step each. `loss` is where the search begins, W/K.
 */
export function fitTwoCapacities(h: HouseHours, loss: number, seed: number): TwoCapacities {
  const n = h.heat.length;
  const middle = ((h.day[0] ?? 0) + (h.day.at(-1) ?? 0)) / 2;
  const none = new Float64Array(n);
  const calm = h.wind ? h.wind.reduce((a, b) => a + b, 0) / n : 0;
  const wind = h.wind ? h.wind.map((w) => w - calm) : none;
  const day = h.day.map((d) => d - middle);
  const met = new Float64Array(n);
  let scale = 0.1 * (h.heat.reduce((a, b) => a + Math.abs(b), 0) / n) + 10;
  const extra = guesses.length;
  const misses = (q: readonly number[], into: Float64Array): void => {
    heatOfHours(houseOf(q, loss, h), h.outdoor, h.indoor, h.ends, h.sun ?? none, wind, day, h.fresh, hour, met);
    for (let i = 0; i < n; i++) into[i] = h.counts[i] === 1 ? ((met[i] ?? 0) - (h.heat[i] ?? 0)) / scale : 0;
    guesses.forEach(([at, deviation], k) => {
      into[n + k] = ((q[k + 1] ?? 0) - at) / deviation;
    });
  };
  const first = marquardt(startOf(h), n + extra, misses);
  const counted = h.counts.reduce((a, b) => a + b, 0);
  const missOf = (s: Searched): number =>
    scale * Math.sqrt(s.misses.subarray(0, n).reduce((a, b) => a + b * b, 0) / Math.max(1, counted));
  scale = missOf(first);
  const found = marquardt(first.at, n + extra, misses);
  return told(h, found, loss, missOf(found), seed);
}

/** Where the search begins: loss, guesses, other gains; sun, its drift, drift of gains, and wind where there are any. */
const startOf = (h: HouseHours): number[] => [
  0,
  ...guesses.map(([at]) => at),
  0.3,
  0,
  ...(h.sun ? [0.3, 0] : []),
  ...(h.wind ? [0] : []),
];

const share = (x: number): number => 1 / (1 + Math.exp(-x));

/** The kernel's numbers from those of the search, which are all about as large as one. */
function houseOf(q: readonly number[], loss: number, h: HouseHours): Float64Array {
  const total = loss * Math.exp(q[0] ?? 0);
  const through = total * share(q[1] ?? 0);
  const place = share(q[2] ?? 0);
  const outer = through / place;
  const between = through / (1 - place);
  const air = loss * 7 * hour * Math.exp(q[3] ?? 0);
  const mass = (outer + between) * 10 * hour * Math.exp(q[4] ?? 0);
  const sun = h.sun ? 7 : undefined;
  const windAt = 7 + (h.sun ? 2 : 0);
  return Float64Array.from([
    total - through,
    outer,
    between,
    air,
    mass,
    sun === undefined ? 0 : (10 * (q[sun] ?? 0)) / place,
    1000 * (q[5] ?? 0),
    10 * (q[6] ?? 0),
    sun === undefined ? 0 : (0.1 * (q[sun + 1] ?? 0)) / place,
    h.wind ? 10 * (q[windAt] ?? 0) : 0,
  ]);
}

/** Loss W/K, sun m², and the hours of both ways to forget, of the house left alone. */
function answersOf(q: readonly number[], loss: number, h: HouseHours): readonly [number, number, number, number] {
  const [direct = 0, outer = 0, between = 0, air = 1, mass = 1, light = 0] = houseOf(q, loss, h);
  const a = -(direct + between) / air;
  const d = -(outer + between) / mass;
  const root = Math.sqrt(((a - d) / 2) ** 2 + (between * between) / (air * mass));
  const hours = (rate: number): number => -1 / (rate * hour);
  const place = between / (outer + between);
  return [direct + outer * place, light * place, hours((a + d) / 2 + root), hours((a + d) / 2 - root)];
}

function told(h: HouseHours, found: Searched, loss: number, miss: number, seed: number): TwoCapacities {
  const spread = inverse(new Matrix(found.slopes.map((a) => found.slopes.map((b) => dot(a, b, 0, a.length)))));
  const again = redrawn(h, found, seed).map((q) => answersOf(q, loss, h));
  const interval = (k: 0 | 1 | 2 | 3): Interval => {
    const likely = answersOf(found.at, loss, h)[k];
    const [low = likely, high = likely] = percentiles(again.map((x) => x[k]).filter(Number.isFinite), [0.05, 0.95]);
    return { likely, low: Math.min(low, likely), high: Math.max(high, likely) };
  };
  const house = houseOf(found.at, loss, h);
  return {
    lossPerDegree: interval(0),
    ...(h.sun ? { aperture: interval(1) } : {}),
    slowHours: interval(2),
    fastHours: interval(3),
    air: house[3] ?? Number.NaN,
    mass: house[4] ?? Number.NaN,
    unlearned: guessed.filter((_, k) => Math.sqrt(spread.get(k + 1, k + 1)) > 0.5 * (guesses[k]?.[1] ?? 1)),
    miss,
    settled: found.settled,
  };
}

/** Where the search would have ended on days drawn again, by one step of Newton's each. */
function redrawn(h: HouseHours, { at, misses, slopes }: Searched, seed: number): number[][] {
  const n = h.heat.length;
  const p = at.length;
  const days = Math.floor(n / 24);
  const partOf = (from: number, to: number) => ({
    normal: slopes.map((a) => slopes.map((b) => dot(a, b, from, to))),
    towards: slopes.map((a) => -dot(a, misses, from, to)),
  });
  const parts = Array.from({ length: days }, (_, d) => partOf(24 * d, 24 * (d + 1)));
  const guess = partOf(n, misses.length);
  const random = seeded(seed);
  return Array.from({ length: draws }, () => {
    const normal = new Matrix(guess.normal.map((row) => [...row]));
    const towards = Matrix.columnVector([...guess.towards]);
    for (const d of drawDays(random, days, blockOf(days)))
      for (let i = 0; i < p; i++) {
        towards.set(i, 0, towards.get(i, 0) + (parts[d]?.towards[i] ?? 0));
        for (let j = 0; j < p; j++) normal.set(i, j, normal.get(i, j) + (parts[d]?.normal[i]?.[j] ?? 0));
      }
    const step = inverse(normal).mmul(towards).to1DArray();
    return at.map((x, i) => x + (step[i] ?? 0));
  });
}

function dot(a: Float64Array, b: Float64Array, from: number, to: number): number {
  let s = 0;
  for (let i = from; i < to; i++) s += (a[i] ?? 0) * (b[i] ?? 0);
  return s;
}
