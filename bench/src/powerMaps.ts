import {
  byDegree,
  generatorSteps,
  lithiumCharge,
  lithiumDischarge,
  type PowerSystem,
  powerSlots,
  replay,
  replayDemand,
  replaySystem,
  startPower,
  stepPower,
} from '@kneewall/engine/physics';
import { atMost, type BenchRow, multiplyAdds, perMillisecond, side } from './measure.ts';

const hours = 212 * 24;
const sizes = 20;

const systemOf = (size: number): PowerSystem => ({
  battery: {
    energy: 28 * size,
    kept: 0.1,
    oneWay: 0.97,
    capacity: byDegree((t) => Math.min(1, 0.8 + 0.008 * Math.max(-20, t))),
    charge: byDegree((t) => lithiumCharge(t).most * 28_000 * size),
    discharge: byDegree((t) => lithiumDischarge(t).most * 28_000 * size),
    heatCapacity: 230_000 * size,
    conductance: 8,
    heater: 0,
    heaterBelow: 5,
  },
  inverter: { most: 6000, nominal: 0.93, idle: 50 },
  charger: { most: 3500, kept: 0.93 },
  generator: { rated: 6000, startBelow: 0.25, stopAbove: 0.8 },
});

/** Steps that the generator runs by the full kernel, for one system: what the replay has to count too. */
function byFullSteps(system: PowerSystem, sun: Float64Array, load: Float64Array, air: Float64Array): number {
  const flows = new Float64Array(powerSlots.flowCount);
  const state = startPower(system, 0.6, air[0] ?? 0);
  let count = 0;
  for (let i = 0; i < hours; i++) {
    stepPower(system, state, flows, sun[i] ?? 0, load[i] ?? 0, air[i] ?? 0, 1);
    if ((flows[powerSlots.generated] ?? 0) > 1) count++;
  }
  return count;
}

/**
 * Question: are 400 power systems done over 20 winters of recorded demand, by the hour, in 3 s on one core? One of the
 * twenty winters (seven months) is timed, all 400 systems of it.
 */
export function powerMapsBench(): BenchRow[] {
  const sun = Float64Array.from({ length: hours }, (_, i) =>
    Math.max(0, 4000 * Math.sin((((i % 24) - 8) / 8) * Math.PI) * (1 + 0.6 * Math.sin(i / 113))),
  );
  const load = Float64Array.from({ length: hours }, (_, i) => 1500 + 900 * Math.sin(i / 7));
  const ambient = Float64Array.from({ length: hours }, (_, i) => 8 * Math.sin(i / 90));
  const all = Array.from({ length: sizes }, (_, i) => replaySystem(systemOf((i + 1) / 5), 1));
  const [own] = all.slice(4);
  if (!own) throw new Error('there are no sizes');
  const demand = replayDemand({ sun, load, ambient, hours: 1 }, own.system.inverter);
  const out = new Float64Array(2);
  replay(own, demand, 1, 0.6, out);
  const counted = out[generatorSteps] ?? Number.NaN;
  if (!(Math.abs(counted - byFullSteps(own.system, sun, load, ambient)) <= 1))
    throw new Error('a replay counts other hours than the full steps do');
  const run = (): void => {
    let sum = 0;
    for (const battery of all)
      for (let arrays = 1; arrays <= sizes; arrays++) {
        replay(battery, demand, arrays / 5, 0.6, out);
        sum += out[generatorSteps] ?? Number.NaN;
      }
    if (!(sum > 0)) throw new Error('no replay counted anything');
  };
  const share = 3000 / 20;
  const times = side(run, () => multiplyAdds(share * perMillisecond));
  return [
    atMost(
      'power maps: 400 systems, a winter of hours',
      times,
      1,
      'at most the time of 105 million multiply-adds, about 150 ms',
    ),
  ];
}
