import { describe, expect, it } from 'vitest';
import { fanPower } from '../physics/network/index.ts';
import { extraFanHeat, ratedBlowerPower } from './fanHeat.ts';
import type { BlowerModel, BlowerTable } from './result.ts';

/** Invented tables. */
const low: BlowerTable = {
  setting: 'low',
  points: [
    { flow: 0.2, pressure: 80, power: 70 },
    { flow: 0.3, pressure: 20, power: 90 },
  ],
};
const high: BlowerTable = {
  setting: 'high',
  points: [
    { flow: 0.25, pressure: 150, power: 160 },
    { flow: 0.4, pressure: 20, power: 220 },
  ],
};
const blower: BlowerModel = { kind: 'torque', tables: [low, high], filterIncluded: false };

describe('blower heat', () => {
  it('is read between the points of a table and not beyond them', () => {
    expect(fanPower(low.points, 0.25)).toBeCloseTo(80, 12);
    expect(fanPower(low.points, 0.2)).toBe(70);
    for (const flow of [0.19, 0.31]) expect(fanPower(low.points, flow)).toBeUndefined();
    expect(fanPower([{ flow: 0.2 }], 0.2)).toBeUndefined();
  });

  it('is rated at the slowest setting that reaches the flow', () => {
    expect(ratedBlowerPower(blower, 0.25)).toBeCloseTo(80, 12);
    expect(ratedBlowerPower(blower, 0.4)).toBeCloseTo(220, 12);
    expect(ratedBlowerPower(blower, 0.5)).toBeUndefined();
  });

  // Fan laws: at one flow and speed power falls with the density of the air (AMCA, ASHRAE; from memory).
  it('counts only what exceeds the sheet, in thin air less', () => {
    const at = { table: high, flow: 0.3, thinness: 1 };
    expect(extraFanHeat(blower, at, 0.3)).toBeCloseTo(180 - 90, 12);
    expect(extraFanHeat(blower, { ...at, thinness: 0.8 }, 0.3)).toBeCloseTo(0.8 * 180 - 90, 12);
    expect(extraFanHeat(blower, at, undefined)).toBe(0);
    expect(extraFanHeat(blower, { ...at, flow: 0.5 }, 0.3)).toBe(0);
  });
});
