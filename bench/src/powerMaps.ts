import {
  byDegree,
  lithiumCharge,
  lithiumDischarge,
  type PowerSystem,
  powerSlots,
  startPower,
  stepPower,
} from '@kneewall/engine/physics';
import { atMost, type BenchRow, multiplyAdds, perMillisecond, side } from './measure.ts';

const hours = 151 * 24;
const systems = 20;

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

/** Question: are 400 power systems done over 20 winters of recorded demand, by the hour, in 3 s on one core? */
export function powerMapsBench(): BenchRow[] {
  const sun = Float64Array.from({ length: hours }, (_, i) =>
    Math.max(0, 4000 * Math.sin((((i % 24) - 8) / 8) * Math.PI)),
  );
  const load = Float64Array.from({ length: hours }, (_, i) => 1500 + 900 * Math.sin(i / 7));
  const air = Float64Array.from({ length: hours }, (_, i) => 8 * Math.sin(i / 90));
  const all = Array.from({ length: systems }, (_, i) => systemOf(0.5 + i / 10));
  const flows = new Float64Array(powerSlots.flowCount);
  const run = (): void => {
    let worst = 0;
    for (const system of all) {
      const state = startPower(system, 0.6, 5);
      for (let i = 0; i < hours; i++) {
        stepPower(system, state, flows, sun[i] ?? 0, load[i] ?? 0, air[i] ?? 0, 1);
        worst = Math.max(worst, Math.abs(flows[powerSlots.residual] ?? 1));
      }
    }
    if (!(worst < 1e-6)) throw new Error('the energy of a power system does not close');
  };
  const share = (3000 * systems) / (400 * 20);
  const times = side(run, () => multiplyAdds(share * perMillisecond));
  return [
    atMost(
      `power maps: ${systems} systems, a winter of hours`,
      times,
      1,
      'at most the time of 5 million multiply-adds, about 7.5 ms',
    ),
  ];
}
