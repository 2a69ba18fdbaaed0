import { describe, expect, it } from 'vitest';
import { demo } from '../../test/demos.ts';
import { evaluate } from '../index.ts';
import { airDensity } from '../physics/air/index.ts';
import type { AirModel } from './ductwork.ts';
import { nominalAir, solveFlows } from './flows.ts';
import { ladderOf, unitEndDrop } from './ladder.ts';
import { reshaped } from './sizing/reshape.ts';
import { unitEndLoss } from './unitEnd.ts';

const project = demo('tern-ledge');
const { air } = evaluate(project, {}).plan.trades;
if (!air?.model.ok || !air.flows.ok) throw new Error('the demo has ducts and a unit');
const model = air.model.value;
const without: AirModel = {
  ...model,
  sections: model.sections.map((x) => ({ ...x, lossCoefficient: x.lossCoefficient - (x.unitEnd?.loss ?? 0) })),
};
const flows = solveFlows(model, nominalAir);

describe('the piece between the unit and its duct', () => {
  it('takes its coefficient times the velocity pressure, on both sides, in the network as on the ladder', () => {
    const boxes = model.sections.filter((x) => x.unitEnd);
    expect(boxes.map((x) => [x.id, x.side])).toEqual([
      ['supply-plenum', 'supply'],
      ['return-box', 'return'],
    ]);
    for (const x of boxes) {
      const v = (flows.sections[x.id] ?? 0) / x.area;
      const took = ((x.unitEnd?.loss ?? 0) * airDensity(20, model.pressure) * v * v) / 2;
      expect(took).toBeGreaterThan(0.1);
      expect(unitEndDrop(model, flows, x)).toBeCloseTo(took, 9);
      // The same flow in a duct without the piece drops less by just that.
      const fixed = { ...x, lossCoefficient: x.lossCoefficient - (x.unitEnd?.loss ?? 0) };
      expect(took).toBeCloseTo(dropOf(x) - dropOf(fixed), 6);
    }
  });

  it('has a rung of its own on each side, and the ladder still adds up', () => {
    const rungs = ladderOf(model, flows);
    const pieces = rungs.filter((r) => r.atUnit);
    expect(pieces.map((r) => r.side)).toEqual(['return', 'supply']);
    for (const [i, id] of ['return-box', 'supply-plenum'].entries()) {
      const duct = rungs.find((r) => r.section === id)?.drop ?? 0;
      expect(duct + (pieces[i]?.drop ?? 0)).toBeCloseTo(flows.drops[id] ?? 0, 12);
    }
    const sum = rungs.reduce((a, r) => a + r.drop, 0);
    expect(sum / flows.staticPressure).toBeCloseTo(1, 3);
  });

  it('moves the point at which blower and ducts meet: less air, more pressure', () => {
    const bare = solveFlows(without, nominalAir);
    expect(flows.flow).toBeLessThan(bare.flow);
    expect(flows.staticPressure).toBeGreaterThan(bare.staticPressure);
  });

  it('is counted on the velocity in the duct, which in twice the area is half of that in the opening', () => {
    const end = { opening: { width: 0.4, height: 0.2 }, offset: [0, 0] as const, length: 1e-9 };
    const duct = { width: 0.4, height: 0.4 };
    // Borda and Carnot 0.25 on the opening's velocity; the way back 0.5 (1 - 1/2)^3/4 on the same.
    expect(unitEndLoss(end, 'supply', duct, 0.16)).toBeCloseTo(4 * 0.25, 6);
    expect(unitEndLoss(end, 'return', duct, 0.16)).toBeCloseTo(4 * 0.5 ** 1.75, 6);
  });

  it('goes where the duct is as large as the opening and in line, and is another one in another size', () => {
    const box = model.sections.find((x) => x.id === 'supply-plenum');
    if (!box?.unitEnd) throw new Error('the demo has a piece there');
    const level = { ...box, unitEnd: { ...box.unitEnd, offset: [0, 0] as const } };
    const alike = reshaped(level, { kind: 'board', ...box.unitEnd.opening }, []);
    expect([alike.unitEnd?.loss, alike.lossCoefficient]).toEqual([0, 0]);
    const small = reshaped(level, { kind: 'board', width: 0.3, height: 0.2 }, undefined);
    expect(small.lossCoefficient - (small.unitEnd?.loss ?? 0)).toBeCloseTo(box.lossCoefficient - box.unitEnd.loss, 12);
    expect(small.unitEnd?.loss).toBeGreaterThan(0.04);
  });

  function dropOf(x: AirModel['sections'][number]): number {
    const only = { ...model, sections: model.sections.map((y) => (y.id === x.id ? x : y)) };
    const fixed = { ...only, blower: { ...only.blower, points: steep(flows.flow) } };
    return solveFlows(fixed, nominalAir).drops[x.id] ?? Number.NaN;
  }
});

/** A blower that gives that flow at any pressure, nearly. */
const steep = (flow: number) => [
  { flow: flow * (1 - 1e-7), pressure: 1e4 },
  { flow: flow * (1 + 1e-7), pressure: -1e4 },
];

it('is as much before a flexible duct as before a round one of metal of that size', () => {
  const end = { opening: { width: 0.66, height: 0.23 }, offset: [0, 0] } as const;
  const [flexible, round] = (['flexible', 'round'] as const).map((kind) =>
    unitEndLoss(end, 'supply', { kind, diameter: 0.2 } as { readonly diameter: number }, Math.PI * 0.01),
  );
  expect(round).toBeGreaterThan(0.01);
  expect(flexible).toBe(round);
});
