import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lithiumCharge, lithiumDischarge } from './battery.ts';
import { generatorSteps, replay, replayDemand, replaySystem, shortSteps } from './replay.kernel.ts';
import { flowCount, generated, short } from './slots.ts';
import { stepPower } from './step.kernel.ts';
import { byDegree, type PowerSystem, startPower } from './system.ts';

const system = (energy: number, rated: number, heater: number): PowerSystem => ({
  battery: {
    energy,
    kept: 0.1,
    oneWay: 0.97,
    capacity: byDegree((t) => Math.min(1, 0.8 + 0.008 * Math.max(-20, t))),
    charge: byDegree((t) => lithiumCharge(t).most * 1000 * energy),
    discharge: byDegree((t) => lithiumDischarge(t).most * 1000 * energy),
    heatCapacity: 8300 * energy,
    conductance: 4,
    heater,
    heaterBelow: 5,
  },
  inverter: { most: 5000, nominal: 0.93, idle: 50 },
  charger: { most: 3500, kept: 0.93 },
  generator: { rated, startBelow: 0.25, stopAbove: 0.8 },
});

/** Steps that count, by the full kernel. */
function stepped(
  own: PowerSystem,
  sun: Float64Array,
  load: Float64Array,
  air: Float64Array,
  arrays: number,
  hours: number,
) {
  const state = startPower(own, 0.6, air[0] ?? 0);
  const flows = new Float64Array(flowCount);
  const found = [0, 0];
  for (let i = 0; i < sun.length; i++) {
    stepPower(own, state, flows, (sun[i] ?? 0) * arrays, load[i] ?? 0, air[i] ?? 0, hours);
    if ((flows[generated] ?? 0) > 1) found[0] = (found[0] ?? 0) + 1;
    if ((flows[short] ?? 0) > 1) found[1] = (found[1] ?? 0) + 1;
  }
  return found;
}

const hoursOfWinter = 2400;
const fill = (f: (i: number) => number): Float64Array => Float64Array.from({ length: hoursOfWinter }, (_, i) => f(i));

describe('a replay of recorded demand', () => {
  // The oracle is the full step, which is itself held to close in energy.
  it('counts what the full step counts, with and without a generator, in the cold and in short supply', () => {
    fc.assert(
      fc.property(
        fc.record({
          energy: fc.double({ min: 3, max: 80, noNaN: true }),
          rated: fc.constantFrom(0, 900, 6000),
          heater: fc.constantFrom(0, 150),
          arrays: fc.double({ min: 0.1, max: 4, noNaN: true }),
          cold: fc.double({ min: -25, max: 15, noNaN: true }),
          load: fc.double({ min: 0, max: 7000, noNaN: true }),
          hours: fc.constantFrom(0.25, 1),
        }),
        (x) => {
          const own = system(x.energy, x.rated, x.heater);
          const sun = fill((i) =>
            Math.max(0, 3000 * Math.sin((((i % 24) - 8) / 8) * Math.PI) * (1 + Math.sin(i / 97))),
          );
          const load = fill((i) => (i % 11 === 0 ? 0 : x.load * (0.5 + 0.5 * Math.sin(i / 7))));
          const ambient = fill((i) => x.cold + 8 * Math.sin(i / 90));
          const out = new Float64Array(2);
          const demand = replayDemand({ sun, load, ambient, hours: x.hours }, own.inverter);
          replay(replaySystem(own, x.hours), demand, x.arrays, 0.6, out);
          const [turned = 0, wanting = 0] = stepped(own, sun, load, ambient, x.arrays, x.hours);
          // One step of slack: a comparison on the last bit may fall either way.
          expect(Math.abs((out[generatorSteps] ?? -9) - turned)).toBeLessThanOrEqual(1);
          expect(Math.abs((out[shortSteps] ?? -9) - wanting)).toBeLessThanOrEqual(1);
        },
      ),
      { seed: 20261127, numRuns: 150 },
    );
  });
});
