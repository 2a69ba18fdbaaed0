import { describe, expect, it } from 'vitest';
import { compileFan, fanPressure } from '../physics/network/index.ts';
import { heldAirflow } from './blowerCurve.ts';

/** Invented: holds 0.38 m³/s to 125 Pa, wobbling as measured tables do, then falls. */
const sheet = [
  { flow: 0.38, pressure: 25, power: 110 },
  { flow: 0.376, pressure: 50, power: 150 },
  { flow: 0.38, pressure: 75, power: 190 },
  { flow: 0.38, pressure: 125, power: 270 },
  { flow: 0.33, pressure: 150, power: 285 },
  { flow: 0.26, pressure: 175, power: 280 },
];

describe('a blower that holds its airflow', () => {
  it('gives all its pressure at the set flow, and falls along the table beyond it', () => {
    const curve = compileFan(heldAirflow(sheet, 200));
    expect(fanPressure(curve, 0.38)).toBeCloseTo(125, 9);
    expect(fanPressure(curve, 0.33)).toBeCloseTo(150, 9);
    expect(fanPressure(curve, 0.38 * 1.0006)).toBeLessThan(1);
  });

  it('rises in flow and falls in pressure from point to point, whatever the table wobbles', () => {
    const points = heldAirflow(sheet, 200);
    for (const [i, p] of points.slice(1).entries()) {
      expect(p.flow).toBeGreaterThan(points[i]?.flow ?? 0);
      expect(p.pressure).toBeLessThan(points[i]?.pressure ?? 0);
    }
    expect(points.find((p) => p.pressure === 125)?.power).toBe(270);
  });

  it('of a table that ends before it falls holds to what the sheet allows, of one that falls does not', () => {
    const flat = sheet.slice(0, 4);
    expect(heldAirflow(flat, 200)[0]).toEqual({ flow: 0.38, pressure: 200 });
    expect(heldAirflow(flat, undefined)[0]?.pressure).toBe(125);
    expect(heldAirflow(sheet, 200)[0]?.pressure).toBe(175);
    expect(heldAirflow([{ flow: 0.38, pressure: 125 }], 200)).toHaveLength(3);
    expect(heldAirflow([], 200)).toEqual([]);
  });
});
