import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { airDensity } from '../../physics/air/index.ts';
import { dischargeCoefficient } from '../../physics/flow/index.ts';
import type { AirModel, DuctSection } from '../ductwork.ts';
import { nominalAir, solveFlows } from '../flows.ts';
import type { HouseAir, ShutDoors } from './houseAir.ts';
import { shutSolver, withEnough } from './shutDoors.ts';

const section = (id: string, side: DuctSection['side'], more: Partial<DuctSection> = {}): DuctSection => ({
  id,
  name: id,
  side,
  kind: 'round',
  diameter: 0.25,
  area: 0.049,
  length: 5,
  surface: 4,
  roughness: 0.00009,
  frictionFactor: 1,
  lossCoefficient: 1,
  insulation: 1,
  leakage: 0,
  place: 'attic',
  supports: 1.2,
  ...more,
});
const terminal = (id: string, of: string, room: string) => ({
  id,
  name: id,
  section: of,
  room,
  faceArea: 0.05,
  freeArea: 0.035,
  resistance: 1500,
});
const model = (leakage = 0, more: Partial<AirModel> = {}): AirModel => ({
  sections: [
    section('to-bed', 'supply', { leakage }),
    section('to-hall', 'supply', { leakage }),
    section('back', 'return', { diameter: 0.4, area: 0.126, leakage }),
  ],
  terminals: [
    terminal('bed', 'to-bed', 'bed'),
    terminal('hall', 'to-hall', 'hall'),
    terminal('grille', 'back', 'hall'),
  ],
  filter: { pressure: 20, velocity: 1.5, exponent: 1.4, area: 0.2 },
  added: 0,
  blower: {
    setting: 'high',
    points: [
      { flow: 0.05, pressure: 200 },
      { flow: 0.2, pressure: 120 },
      { flow: 0.35, pressure: 20 },
    ],
  },
  pressure: 101_325,
  ...more,
});
const density = airDensity(20, 101_325);
const house = (opening: number, bed = 0.004, more: Partial<HouseAir> = {}): HouseAir => ({
  rooms: [{ id: 'bed', opening, leak: bed }],
  leaks: { open: 0.02, exponent: 0.65 },
  exhaust: {},
  ...more,
});

const shutIn = (of: AirModel, h: HouseAir): ShutDoors => shutSolver()(of, nominalAir, solveFlows(of, nominalAir), h);
const bedOf = ({ rooms }: ShutDoors) => {
  const { bed } = rooms;
  if (!bed) throw new Error('the room is there');
  return bed;
};
const through = (area: number, p: number): number =>
  Math.sign(p) * dischargeCoefficient * area * Math.sqrt((2 * Math.abs(p)) / density);
const leaking = (c: number, p: number, n = 0.65): number => Math.sign(p) * c * Math.abs(p) ** n;

describe('a house with its doors shut, ducts and blower solved with it', () => {
  it('keeps the air of every room, and of the hall, to 1e-9 of what the blower moves', () => {
    const any = fc.record({
      opening: fc.double({ min: 1e-4, max: 0.2, noNaN: true }),
      bed: fc.double({ min: 0, max: 0.01, noNaN: true }),
      open: fc.double({ min: 0.001, max: 0.1, noNaN: true }),
      leakage: fc.constantFrom(0, 0.02, 0.2),
      fans: fc.double({ min: 0.001, max: 0.1, noNaN: true }),
    });
    fc.assert(
      fc.property(any, ({ opening, bed, open, leakage, fans }) => {
        const leaks = { open, exponent: 0.65 };
        const shut = shutIn(model(leakage), house(opening, bed, { leaks, exhaust: { bed: fans / 3, '': fans } }));
        const room = bedOf(shut);
        const inBed = room.net - through(opening, room.pressure) - leaking(bed, room.outdoors) - fans / 3;
        // Ducts that are tight take as much as they give: what leaks through the walls is what the fans move.
        const whole = leaking(bed, room.outdoors) + leaking(open, shut.house) + (4 * fans) / 3;
        const missed = leakage > 0 ? [inBed] : [inBed, whole];
        // Below 1e-4 Pa laws are straight lines, which the arithmetic here does not know.
        const least = Math.min(Math.abs(room.pressure), Math.abs(room.outdoors), Math.abs(shut.house));
        return shut.converged && (least < 1e-4 || missed.every((m) => Math.abs(m) < 1e-9 * shut.flow));
      }),
      { seed: 20261125, numRuns: 200 },
    );
  });

  it('moves no air through walls where ducts are tight and rooms have no leaks: the hall stays at outdoors', () => {
    const shut = shutIn(model(), house(0.01, 0));
    expect(shut.house).toBeCloseTo(0, 6);
    expect(through(0.01, bedOf(shut).pressure)).toBeCloseTo(bedOf(shut).net, 9);
  });

  it('with nothing shut is what the leaks make of the air that ducts lose (closed form)', () => {
    const lossy = model(0, { sections: model().sections.map((x) => (x.id === 'to-bed' ? { ...x, leakage: 0.2 } : x)) });
    const open = solveFlows(lossy, nominalAir);
    const shut = shutIn(lossy, house(0.01, 0, { rooms: [], leaks: { open: 5, exponent: 0.65 } }));
    // Leaks so wide that the house hardly gives way: the ducts lose what they lose with all doors open.
    expect(shut.house).toBeCloseTo(-((open.supplyLeak / 5) ** (1 / 0.65)), 7);
    expect(shut.flow).toBeCloseTo(open.flow, 5);
  });

  it('starves the room more the tighter its door, and the house with it', () => {
    const [loose, fair, tight] = [0.05, 0.01, 0.004].map((opening) => shutIn(model(), house(opening))) as [
      ShutDoors,
      ShutDoors,
      ShutDoors,
    ];
    expect(bedOf(loose).lost).toBeLessThan(bedOf(fair).lost);
    expect(bedOf(fair).lost).toBeLessThan(bedOf(tight).lost);
    expect(loose.house).toBeGreaterThan(fair.house);
    expect(fair.house).toBeGreaterThan(tight.house);
    expect(loose.flow).toBeGreaterThan(tight.flow);
  });

  it('blows nothing into a room that is sealed, and says so instead of failing', () => {
    const shut = shutIn(model(), house(0, 0));
    expect(shut.converged).toBe(true);
    expect(bedOf(shut).supply).toBeCloseTo(0, 12);
    expect(bedOf(shut).lost).toBeCloseTo(1, 9);
  });

  it('is drawn down by exhaust fans, a room of its own by its own fan', () => {
    const still = shutIn(model(), house(0.01));
    const fan = shutIn(model(), house(0.01, 0.004, { exhaust: { '': 0.05 } }));
    const own = shutIn(model(), house(0.01, 0.004, { exhaust: { bed: 0.05 } }));
    expect(fan.house).toBeLessThan(still.house);
    expect(bedOf(own).pressure).toBeLessThan(bedOf(fan).pressure);
  });

  it('the opening it asks for brings the room to 3 Pa', () => {
    const m = model(0.05);
    const open = solveFlows(m, nominalAir);
    const given = house(0.004);
    const { enough = 0 } = bedOf(withEnough(shutIn(m, given), m, nominalAir, open, given));
    expect(bedOf(shutIn(m, house(enough))).pressure).toBeCloseTo(3, 3);
    expect(bedOf(withEnough(shutIn(m, house(0.1)), m, nominalAir, open, house(0.1))).enough).toBeUndefined();
  });

  it('does not pretend to know a house without any way to outdoors', () => {
    expect(shutIn(model(), house(0.01, 0, { leaks: { open: 0, exponent: 0.65 } })).converged).toBe(false);
  });

  it('gives what one laid out anew gives, whatever was solved before', () => {
    const solve = shutSolver();
    for (const opening of [0.01, 0.02, 0.004]) {
      const open = solveFlows(model(0.03), nominalAir);
      const again = bedOf(solve(model(0.03), nominalAir, open, house(opening)));
      expect(again.pressure).toBeCloseTo(bedOf(shutIn(model(0.03), house(opening))).pressure, 9);
    }
  });
});
