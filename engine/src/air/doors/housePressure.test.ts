import { describe, expect, it } from 'vitest';
import { closedDoorPressure, orificeFlow } from '../../physics/flow/index.ts';
import { housePressure } from './housePressure.ts';

const leak = { coefficient: 0.02, exponent: 0.65 };
const room = (net: number, opening: number, coefficient = 0.004) => ({
  id: 'bed',
  net,
  opening,
  leak: { coefficient, exponent: 0.65 },
});

describe('pressure of a house with its doors shut', () => {
  it('is none where supply and return are even and rooms have no leaks of their own', () => {
    const { pressure, converged } = housePressure({ net: -0.05, leak }, [room(0.05, 0.01, 0)], 1.2);
    expect(converged).toBe(true);
    expect(pressure).toBeCloseTo(0, 6);
  });

  it('is what the leaks make of the air lost, with nothing shut (closed form)', () => {
    const { pressure } = housePressure({ net: -0.03, leak }, [], 1.2);
    expect(pressure).toBeCloseTo(-((0.03 / 0.02) ** (1 / 0.65)), 9);
  });

  it('balances in every room: what is blown in goes under the door and out through the walls', () => {
    const bed = room(0.06, 0.008);
    const { pressure: open } = housePressure({ net: -0.06, leak }, [bed], 1.2);
    // From the open part's own balance: what comes in through its leaks is missing under the door.
    const underDoor = 0.06 - 0.02 * Math.abs(open) ** 0.65;
    const across = (1.2 / 2 / (0.6 * 0.008) ** 2) * underDoor ** 2;
    expect(orificeFlow(0.008, across, 1.2) + 0.004 * (across + open) ** 0.65).toBeCloseTo(0.06, 7);
    expect(open).toBeLessThan(0);
    // Drawn into a house that gives way, the door sees more than one against a hall at rest.
    const alone = closedDoorPressure({ opening: bed.opening, leak: bed.leak }, bed.net, 1.2)?.pressure ?? 0;
    expect(across).toBeGreaterThan(alone);
  });

  it('gets worse with the doors tighter, and does not pretend to know a house without leaks', () => {
    const at = (opening: number) => housePressure({ net: -0.06, leak }, [room(0.06, opening)], 1.2).pressure;
    expect([0.02, 0.01, 0.005].map(at)).toEqual([0.02, 0.01, 0.005].map(at).sort((a, b) => b - a));
    expect(housePressure({ net: -0.06, leak: { coefficient: 0, exponent: 0.65 } }, [], 1.2).converged).toBe(false);
  });
});
