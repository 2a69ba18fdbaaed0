import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  byDegree,
  lithiumCharge,
  lithiumDischarge,
  type PowerSystem,
  powerAtHand,
  powerSlots,
  startPower,
  stepPower,
} from './index.ts';
import { alternatingFrom, directFor } from './inverter.ts';

const system = (change: Partial<PowerSystem> = {}): PowerSystem => ({
  battery: {
    energy: 10,
    kept: 0.1,
    oneWay: 0.96,
    capacity: byDegree((t) => Math.min(1, 0.8 + Math.max(-20, t) * 0.008)),
    charge: byDegree((t) => lithiumCharge(t).most * 10_000),
    discharge: byDegree((t) => lithiumDischarge(t).most * 10_000),
    heatCapacity: 80_000,
    conductance: 5,
    heater: 0,
    heaterBelow: 5,
  },
  inverter: { most: 5000, nominal: 0.93, idle: 50 },
  charger: { most: 3000, kept: 0.92 },
  generator: { rated: 0, startBelow: 0.2, stopAbove: 0.8 },
  ...change,
});
const quarter = 0.25;
const { stored, cell, served, short, sunLeft, sunRefused, into, generated, residual, flowCount } = powerSlots;

describe('an inverter with its own idle draw', () => {
  it('is undone by its inverse', () => {
    const own = { most: 5000, nominal: 0.93, idle: 50 };
    for (const w of [0, 1, 50, 700, 2500, 5000]) expect(alternatingFrom(directFor(w, own), own)).toBeCloseTo(w, 8);
    expect(directFor(5000, own)).toBeCloseTo(5000 / 0.93, 6);
  });
});

describe('a step of a power system', () => {
  it('closes in energy, serves no more than is wanted, and keeps the battery within its bounds', () => {
    const watts = fc.double({ min: 0, max: 9000, noNaN: true });
    const steps = fc.array(fc.tuple(watts, watts, fc.double({ min: -30, max: 40, noNaN: true })), {
      minLength: 5,
      maxLength: 60,
    });
    fc.assert(
      fc.property(steps, fc.constantFrom(0, 4000), fc.constantFrom(0, 200), (all, rated, heater) => {
        const plain = system();
        const own = system({
          battery: { ...plain.battery, heater },
          generator: { ...plain.generator, rated },
        });
        const state = startPower(own, 0.5, 15);
        const flows = new Float64Array(flowCount);
        for (const [sun, load, ambient] of all) {
          const hand = powerAtHand(own, state, sun, quarter);
          stepPower(own, state, flows, sun, load, ambient, quarter);
          const flow = sun + load + 1;
          expect(Math.abs(flows[residual] ?? 1)).toBeLessThanOrEqual(1e-9 * flow);
          expect(flows[served]).toBeLessThanOrEqual(load + 1e-9 * flow);
          expect((flows[served] ?? 0) + (flows[short] ?? 0)).toBeCloseTo(load, 6);
          if (load <= hand) expect(flows[short]).toBeLessThanOrEqual(1e-6 * flow);
          expect(state[stored]).toBeGreaterThanOrEqual(-1e-9);
          expect(state[stored]).toBeLessThanOrEqual(10 + 1e-9);
          for (const f of flows.subarray(0, residual)) expect(f).toBeGreaterThanOrEqual(-1e-9 * flow);
        }
      }),
      { seed: 11, numRuns: 150 },
    );
  });

  it('gives no sun to cells below freezing, and does with a heater in time', () => {
    const frozen = system();
    const state = startPower(frozen, 0.5, -5);
    const flows = new Float64Array(flowCount);
    stepPower(frozen, state, flows, 2000, 100, -5, quarter);
    expect(flows[into]).toBe(0);
    expect(flows[sunRefused]).toBeGreaterThan(1500);
    expect(flows[sunRefused]).toBe(flows[sunLeft]);
    const warmed = system({ battery: { ...frozen.battery, heater: 200 } });
    for (let i = 0; i < 12; i++) stepPower(warmed, state, flows, 2000, 100, -5, quarter);
    expect(state[cell]).toBeGreaterThan(0);
    expect(flows[into]).toBeGreaterThan(500);
  });

  it('takes so long to empty as the hand chain says', () => {
    // 0.9 of 10 kWh at 25 °C, 0.96 out, 500 W and 50 W idle through the curve.
    const own = system();
    const state = startPower(own, 1, 25);
    const flows = new Float64Array(flowCount);
    let hours = 0;
    do {
      stepPower(own, state, flows, 0, 500, 25, quarter);
      hours += quarter;
    } while ((flows[short] ?? 0) < 1 && hours < 100);
    expect(hours).toBeGreaterThan((9000 * 0.96) / (50 + directFor(500, own.inverter)) - quarter);
    expect(hours).toBeLessThan((9000 * 0.96) / (50 + directFor(500, own.inverter)) + 2 * quarter);
  });

  it('starts the generator at its rule, charges with what the load leaves, and rests when full enough', () => {
    const own = system({ generator: { rated: 4000, startBelow: 0.2, stopAbove: 0.8 } });
    const state = startPower(own, 0.19, 20);
    const flows = new Float64Array(flowCount);
    stepPower(own, state, flows, 0, 1500, 20, quarter);
    expect(flows[generated]).toBeCloseTo(4000, 9);
    expect(flows[into]).toBeCloseTo(2500 * 0.92 - 50, 6);
    for (let i = 0; i < 40 && (flows[generated] ?? 0) > 0; i++) stepPower(own, state, flows, 0, 1500, 20, quarter);
    expect((state[stored] ?? 0) / 10).toBeGreaterThan(0.75);
  });
});
