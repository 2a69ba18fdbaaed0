import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { closedDoorPressure, openingFor, orificeFlow, orificesInSeries } from './index.ts';

const noLeak = { coefficient: 0, exponent: 0.65 };

describe('a shut door', () => {
  it('is a plain orifice where nothing else leaks', () => {
    const door = closedDoorPressure({ opening: 0.01, leak: noLeak }, orificeFlow(0.01, 7, 1.2), 1.2);
    expect(door?.pressure).toBeCloseTo(7, 12);
  });

  it('balances whatever is open, and the opening it asks for gives the pressure wished', () => {
    const any = fc.record({
      opening: fc.double({ min: 1e-4, max: 0.3, noNaN: true }),
      coefficient: fc.double({ min: 0, max: 0.02, noNaN: true }),
      exponent: fc.double({ min: 0.5, max: 1, noNaN: true }),
      flow: fc.double({ min: 1e-4, max: 0.3, noNaN: true }),
      density: fc.double({ min: 0.8, max: 1.3, noNaN: true }),
    });
    fc.assert(
      fc.property(any, ({ opening, coefficient, exponent, flow, density }) => {
        const leak = { coefficient, exponent };
        const door = closedDoorPressure({ opening, leak }, flow, density);
        if (!door) return false;
        const needed = openingFor(3, flow, leak, density);
        const held = closedDoorPressure({ opening: needed, leak }, flow, density);
        return (
          Math.abs(door.residual) < 1e-12 &&
          (needed === 0 ? (held?.pressure ?? 0) <= 3 + 1e-9 : Math.abs((held?.pressure ?? 0) - 3) < 1e-9)
        );
      }),
      { seed: 20261125, numRuns: 500 },
    );
  });

  it('has no pressure to speak of with nothing flowing, and none at all with no way out', () => {
    expect(closedDoorPressure({ opening: 0.01, leak: noLeak }, 0, 1.2)).toEqual({ pressure: 0, residual: 0 });
    expect(closedDoorPressure({ opening: 0, leak: noLeak }, 0.05, 1.2)).toBeUndefined();
  });

  it('two equal grilles behind each other pass as much as one of 0.707 of the area', () => {
    expect(orificesInSeries(0.04, 0.04)).toBeCloseTo(0.04 / Math.SQRT2, 15);
    expect(orificesInSeries(0.04, 0)).toBe(0);
  });
});
