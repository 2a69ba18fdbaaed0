import { partLoadFactor } from './season.ts';
import { celsius } from './usClimate.ts';

/** W given and W taken at one test. */
export type Test = { readonly capacity: number; readonly power: number };
export type Line = (outdoor: number) => Test;

/** °C of the US tests: heating by `warm` 62 °F, `mild` 47, `frost` 35, `cold` 17; cooling 67, 82, 87 and 95 °F. */
export const usTests = {
  warm: celsius(62),
  mild: celsius(47),
  frost: celsius(35),
  cold: celsius(17),
  coolLow: celsius(67),
  coolMild: celsius(82),
  coolBetween: celsius(87),
  coolHot: celsius(95),
} as const;

/** Below 45 °F and above 17 °F a unit frosts. */
const frostFrom = celsius(45);

/** The straight line through two tests; by the method it runs on beyond both. */
export const lineThrough = (t1: number, a: Test, t2: number, b: Test): Line => {
  const along = (t: number, x: number, y: number): number => x + ((t - t1) / (t2 - t1)) * (y - x);
  return (t) => ({ capacity: along(t, a.capacity, b.capacity), power: along(t, a.power, b.power) });
};

/** Tests at 47 °F, 17 °F and, where it was run, 35 °F. */
export type HeatingTests = { readonly mild: Test; readonly cold: Test; readonly frost?: Test };

/** What the method takes for the frost test where none was run. Source: `equipment.defrost`. */
export const assumedFrostTest = ({ mild, cold }: HeatingTests): Test => ({
  capacity: 0.9 * (cold.capacity + 0.6 * (mild.capacity - cold.capacity)),
  power: 0.985 * (cold.power + 0.6 * (mild.power - cold.power)),
});

/** Capacity and power at one speed: through the cold and mild tests, and through the frost test where frost forms. */
export function frostedLine(tests: HeatingTests): Line {
  const dry = lineThrough(usTests.cold, tests.cold, usTests.mild, tests.mild);
  const frosted = lineThrough(usTests.cold, tests.cold, usTests.frost, tests.frost ?? assumedFrostTest(tests));
  return (t) => (t >= frostFrom || t <= usTests.cold ? dry(t) : frosted(t));
}

/** A unit meeting a load: W delivered and taken, and the most it could give and take. */
export type Operation = {
  readonly delivered: number;
  readonly input: number;
  readonly running: number;
  readonly factor: number;
  readonly most: Test;
};
export type Unit = (outdoor: number, load: number) => Operation;

const efficiency = ({ capacity, power }: Test): number => capacity / power;

/**
 * A unit meeting a load with the speeds it has, W, capacities rising, at least one. It stops and starts below its
 * lowest; between two its efficiency runs straight with the load; above its highest it gives all it can.
 */
export function meetLoad(speeds: readonly [Test, ...Test[]], load: number, cyclic: number): Operation {
  const [low] = speeds;
  const most = speeds.at(-1) ?? low;
  if (load <= low.capacity) {
    const running = load / low.capacity;
    const factor = partLoadFactor(cyclic, running);
    return { delivered: load, input: (running * low.power) / factor, running, factor, most };
  }
  const above = speeds.findIndex((s) => s.capacity > load);
  const [a, b] = [speeds[above - 1], speeds[above]];
  if (!a || !b) return { delivered: most.capacity, input: most.power, running: 1, factor: 1, most };
  const share = (load - a.capacity) / (b.capacity - a.capacity);
  const input = load / (efficiency(a) + share * (efficiency(b) - efficiency(a)));
  return { delivered: load, input, running: 1, factor: 1, most };
}

/** One speed: it stops and starts below its capacity. */
export const singleSpeed =
  (line: Line, cyclic: number): Unit =>
  (t, load) =>
    meetLoad([line(t)], load, cyclic);

/** Lines at lowest, intermediate and highest speed. */
export type ThreeSpeeds = { readonly low: Line; readonly between: Line; readonly most: Line };

/**
 * The intermediate speed's line: through its one test, its slopes between those of lowest and highest speed by where
 * the test lies between the two. Slopes are taken about the test.
 */
export function betweenLine(low: Line, most: Line, at: number, test: Test): Line {
  const slope = (line: Line, of: keyof Test) => line(at + 0.5)[of] - line(at - 0.5)[of];
  const mixed = (of: keyof Test): number => {
    const share = (test[of] - low(at)[of]) / (most(at)[of] - low(at)[of]);
    return slope(low, of) * (1 - share) + share * slope(most, of);
  };
  const [capacity, power] = [mixed('capacity'), mixed('power')];
  return (t) => ({ capacity: test.capacity + capacity * (t - at), power: test.power + power * (t - at) });
}

/** Variable speed: by its three speeds. */
export const variableSpeed =
  (speeds: ThreeSpeeds, cyclic: number): Unit =>
  (t, load) =>
    meetLoad([speeds.low(t), speeds.between(t), speeds.most(t)], load, cyclic);
