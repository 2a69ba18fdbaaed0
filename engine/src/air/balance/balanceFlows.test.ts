import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { AirModel } from '../ductwork.ts';
import { nominalAir, solveFlows } from '../flows.ts';
import { type BalancedFlows, balanceFlows } from './balanceFlows.ts';
import { dampered } from './dampered.ts';
import { damperPlaces } from './places.ts';
import { house, section, terminal, trees } from './randomDucts.ts';
import { placeFlow } from './ways.ts';

const anyAngle = { open: 0.2, most: 1e9 };

const supplied = (model: AirModel, found: BalancedFlows, shares: Readonly<Record<string, number>>) => {
  const byRoom = new Map<string, number>();
  for (const p of damperPlaces(model)) byRoom.set(p.room, (byRoom.get(p.room) ?? 0) + placeFlow(p, found.flows));
  const all = [...byRoom.values()].reduce((a, q) => a + q, 0);
  const sum = [...byRoom.keys()].reduce((a, room) => a + (shares[room] ?? 0), 0);
  return Object.fromEntries([...byRoom].map(([room, q]) => [room, q / all / ((shares[room] ?? 0) / sum)]));
};

describe('balancing', () => {
  it('of three plain branches takes what the closed form says, p = k q²', () => {
    // checks/air 10: 76.84 Pa drive 196.01, 123.97 and 80.02 L/s through k 0.002, 0.005, 0.012 Pa/(L/s)².
    const k = [2000, 5000, 12_000];
    const ways = k.map((_, i) => section(`way-${i}`, { length: 1e-9, roughness: 0, lossCoefficient: 0 }));
    const model = house(
      ways,
      k.map((r, i) => terminal(`reg-${i}`, `way-${i}`, `room-${i}`, r)),
    );
    const shares = { 'room-0': 0.5, 'room-1': 0.2, 'room-2': 0.3 };
    const found = balanceFlows(model, damperPlaces(model), shares, { open: 0, most: 1e9 });
    // The hardest way at these shares stays open, every other takes up the difference.
    const needs = k.map((r, i) => r * [0.5, 0.2, 0.3][i]! ** 2);
    const hardest = Math.max(...needs);
    const area = Math.PI / 100;
    k.forEach((_, i) => {
      const q = [0.5, 0.2, 0.3][i]!;
      const loss = (hardest - needs[i]!) / ((1.204 / 2) * (q / area) ** 2);
      // Registers are stated for air of 1.204 kg/m³, dampers for the air as it is; both grow with density alike.
      expect(found.losses[`room-${i}`]).toBeCloseTo(loss, 4);
    });
    expect(found.converged).toBe(true);
  });

  it('gives every room its share to 1e-6 on random trees, with one room’s dampers open and no more air than before', () => {
    fc.assert(
      fc.property(trees, ({ model, shares }) => {
        const places = damperPlaces(model);
        const found = balanceFlows(model, places, shares, anyAngle);
        expect(found.converged).toBe(true);
        expect(found.rounds).toBeLessThan(40);
        for (const reached of Object.values(supplied(model, found, shares)))
          expect(Math.abs(reached - 1)).toBeLessThan(1e-6);
        expect(Math.min(...Object.values(found.losses))).toBeCloseTo(0.2, 9);
        const open = solveFlows(dampered(model, places, new Map(places.map((p) => [p.id, 0.2]))), nominalAir);
        expect(found.flows.flow).toBeLessThanOrEqual(open.flow * (1 + 1e-9));
      }),
      { seed: 7, numRuns: 300 },
    );
  });

  it('the more a room is to get the less its damper is turned against the others', () => {
    fc.assert(
      fc.property(trees, fc.double({ min: 1.05, max: 2, noNaN: true }), ({ model, shares }, more) => {
        const places = damperPlaces(model);
        const rooms = [...new Set(places.map((p) => p.room))];
        const [first = ''] = rooms;
        // A room alone has nobody to turn against; rooms on common trunks may pass each other's pressures about.
        if (rooms.length < 2 || model.sections.some((x) => x.from?.startsWith('trunk') && x.id.startsWith('trunk')))
          return;
        const less = balanceFlows(model, places, shares, anyAngle);
        const wanted = { ...shares, [first]: (shares[first] ?? 0) * more };
        const then = balanceFlows(model, places, wanted, anyAngle);
        const against = (f: BalancedFlows) =>
          Math.min(...rooms.slice(1).map((r) => (f.losses[r] ?? 0) - (f.losses[first] ?? 0)));
        expect(against(then)).toBeGreaterThan(against(less));
      }),
      { seed: 11, numRuns: 100 },
    );
  });

  it('stops at the last angle a damper may have, says so, and shares the rest among the others', () => {
    const ways = ['near', 'far', 'farther'].map((id) =>
      section(id, { length: id === 'near' ? 0.5 : 10, diameter: id === 'near' ? 0.3 : 0.12 }),
    );
    const model = house(
      ways,
      ways.map((x) => terminal(`reg-${x.id}`, x.id, x.id, 200)),
    );
    const places = damperPlaces(model);
    const shares = { near: 0.1, far: 0.5, farther: 0.4 };
    const found = balanceFlows(model, places, shares, { open: 0.2, most: 108 });
    expect(found.beyond).toEqual(['near']);
    expect(found.losses.near).toBe(108);
    const reached = supplied(model, found, shares);
    expect(reached.near).toBeGreaterThan(1);
    expect(reached.far).toBeCloseTo(reached.farther ?? 0, 8);
    expect(reached.far).toBeLessThan(1);
  });

  it('shuts off a room that is to get nothing as far as its damper may be turned', () => {
    const ways = ['a', 'b', 'c'].map((id) => section(id, {}));
    const model = house(
      ways,
      ways.map((x) => terminal(`reg-${x.id}`, x.id, x.id, 300)),
    );
    const found = balanceFlows(model, damperPlaces(model), { a: 0, b: 1, c: 1 }, { open: 0.2, most: 108 });
    expect(found).toMatchObject({ converged: true, beyond: ['a'], losses: { a: 108, b: 0.2, c: 0.2 } });
  });

  it('finds the collar nearest the unit behind which one room is alone, and registers where none is', () => {
    const model = house(
      [
        section('trunk', {}),
        section('to-a', { from: 'trunk' }),
        section('a-left', { from: 'to-a' }),
        section('a-right', { from: 'to-a' }),
        section('shared', { from: 'trunk' }),
      ],
      [
        terminal('a1', 'a-left', 'a', 300),
        terminal('a2', 'a-right', 'a', 300),
        terminal('b1', 'shared', 'b', 300),
        terminal('c1', 'shared', 'c', 300),
      ],
    );
    expect(damperPlaces(model).map(({ id, at, trunk }) => ({ id, at, trunk }))).toEqual([
      { id: 'to-a', at: 'collar', trunk: ['trunk'] },
      { id: 'b1', at: 'register', trunk: ['shared', 'trunk'] },
      { id: 'c1', at: 'register', trunk: ['shared', 'trunk'] },
    ]);
    const found = balanceFlows(model, damperPlaces(model), { a: 1, b: 1, c: 3 }, anyAngle);
    for (const reached of Object.values(supplied(model, found, { a: 1, b: 1, c: 3 })))
      expect(reached).toBeCloseTo(1, 8);
  });
});
