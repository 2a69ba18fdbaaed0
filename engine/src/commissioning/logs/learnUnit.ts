import type { Interval } from '../../physics/fitting/index.ts';
import type { LogDays } from './logDays.ts';
import type { ExpectedUnit, HouseLog } from './logHours.ts';
import { widened } from './widened.ts';

const daysLeast = 14;
const blockDays = 3;
/** What meters of heat and sensors are off by, and frost beside what is usual. Source: `commissioning.log-unit`. */
const modelMiss = 0.07;

/**
 * Power drawn over what the plan expects for the same heat at the same cold: a ratio of sums over whole days. Heat is
 * looked up hour by hour: a unit draws more than in proportion for more heat, so that the mean of a day would expect too
 * little. Interval from blocks of days left out in turn, widened by what no log can tell of itself.
 */
export function learnUnit(log: HouseLog, { day }: LogDays, expected: ExpectedUnit | undefined): Interval | undefined {
  const { heat, power, outdoor, first } = log;
  if (!power || !expected) return undefined;
  const sums = Array.from(day, (d): readonly [number, number] => {
    let [drawn, planned] = [0, 0];
    for (let h = 24 * d - first; h < 24 * (d + 1) - first; h++) {
      const [p, q, t] = [power[h] ?? Number.NaN, heat[h] ?? Number.NaN, outdoor[h] ?? Number.NaN];
      if (Number.isNaN(p + q + t)) continue;
      drawn += p;
      planned += expected.power(t, q);
    }
    return [drawn, planned];
  }).filter(([drawn, planned]) => drawn > 0 && planned > 0);
  if (sums.length < daysLeast) return undefined;
  const [drawn, planned] = totalOf(sums);
  const likely = drawn / planned;
  const without = blocksOf(sums).map((block) => {
    const [d, p] = totalOf(block);
    return (drawn - d) / (planned - p);
  });
  const k = without.length;
  const middle = without.reduce((a, b) => a + b, 0) / k;
  const half = 1.8 * Math.sqrt(((k - 1) / k) * without.reduce((a, b) => a + (b - middle) ** 2, 0));
  return widened({ likely, low: likely - half, high: likely + half }, modelMiss);
}

type Sums = readonly (readonly [drawn: number, planned: number])[];

const totalOf = (sums: Sums): readonly [number, number] =>
  sums.reduce<readonly [number, number]>(([a, b], [d, p]) => [a + d, b + p], [0, 0]);

/** Neighbouring days; those left over at the end join the last. */
function blocksOf(sums: Sums): Sums[] {
  const count = Math.floor(sums.length / blockDays);
  return Array.from({ length: count }, (_, b) =>
    sums.slice(blockDays * b, b === count - 1 ? sums.length : blockDays * (b + 1)),
  );
}
