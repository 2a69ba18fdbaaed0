import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bladeLosses } from '../../physics/flow/index.ts';
import type { AirModel } from '../ductwork.ts';
import { nominalAir, solveFlows } from '../flows.ts';
import { balanceFlows } from './balanceFlows.ts';
import { dampered } from './dampered.ts';
import { partsOf } from './parts.ts';
import { damperPlaces } from './places.ts';
import { houseOf, trees } from './randomDucts.ts';
import { withinTable } from './withinTable.ts';

/** The same ducts on a blower whose table begins that far between the flow when balanced and with all dampers open. */
function cutTable(model: AirModel, shares: Readonly<Record<string, number>>, between: number) {
  const places = damperPlaces(model);
  const rooms = [...new Set(places.map((p) => p.room))];
  const sum = rooms.reduce((a, room) => a + (shares[room] ?? 0), 0);
  const wanted = Object.fromEntries(rooms.map((room) => [room, (shares[room] ?? 0) / sum]));
  const whole = balanceFlows(model, places, wanted, bladeLosses);
  const open = solveFlows(dampered(model, places, new Map(places.map((p) => [p.id, bladeLosses.open]))), nominalAir);
  const least = whole.flows.flow + between * (open.flow - whole.flows.flow);
  return { places, wanted, open, least, cut: houseOf(model, least) };
}

describe('a blower whose table ends early', () => {
  it('is brought to its end and no further: who is short stands open, all others get equal parts, nobody less than with all open', () => {
    let seen = 0;
    fc.assert(
      fc.property(trees, fc.double({ min: 0.1, max: 0.9, noNaN: true }), ({ model, shares }, between) => {
        const { places, wanted, open, least, cut } = cutTable(model, shares, between);
        // With next to nothing between them there is nothing to find.
        if (open.flow < (1 + 1e-3) * least) return;
        const found = withinTable(cut, places, wanted, open);
        if (!found.limited || found.beyond.length > 0) return;
        expect(found.flows.flow).toBeGreaterThanOrEqual(least * (1 - 1e-9));
        const [parts, before] = [partsOf(places, wanted, found.flows), partsOf(places, wanted, open)];
        const turned = Object.keys(parts).filter((r) => (found.losses[r] ?? 0) > bladeLosses.open * (1 + 1e-6));
        if (turned.length === 0) return;
        seen++;
        const level = Math.max(...turned.map((r) => parts[r] ?? 0));
        for (const room of turned) expect((parts[room] ?? 0) / level).toBeCloseTo(1, 6);
        expect(Math.min(...Object.values(parts))).toBeGreaterThanOrEqual(Math.min(...Object.values(before)) - 1e-6);
      }),
      { seed: 5, numRuns: 30, endOnFailure: true },
    );
    expect(seen).toBeGreaterThan(10);
  });
});
