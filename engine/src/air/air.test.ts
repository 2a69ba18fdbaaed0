import { type Project, resolveProject } from '@kneewall/project';
import { describe, expect, it } from 'vitest';
import { demo } from '../../test/demos.ts';
import { evaluate } from '../index.ts';
import { airDensity } from '../physics/air/index.ts';
import { attempt } from '../plan/outcome.ts';
import { scenario } from '../plan/scenario.ts';
import { ductHeat } from './ductHeat.ts';
import type { AirModel } from './ductwork.ts';
import { solveFlows } from './flows.ts';
import { smallestChange } from './mend.ts';
import { airModel } from './model.ts';

const project = demo('tern-ledge');
const { air, equipment } = evaluate(project, {}).plan.trades;
if (!air?.model.ok || !equipment?.chosen.ok) throw new Error('the demo has ducts and a unit');
const model = air.model.value;
const blower = equipment.candidates[equipment.chosen.value]?.blower;
const still = { supplyTemperature: 20, returnTemperature: 20 };
const inAttic = (m: AirModel): AirModel => ({
  ...m,
  sections: m.sections.map((x) => ({ ...x, place: 'attic' as const })),
});
const tight = (m: AirModel): AirModel => ({ ...m, sections: m.sections.map((x) => ({ ...x, leakage: 0 })) });

describe('heat along the ducts', () => {
  it.each([
    ['winter', { leaving: 38, indoor: 20, attic: -9 }],
    ['summer', { leaving: 12, indoor: 24, attic: 52 }],
  ])('in %s: what the unit gives is what rooms and attic get, to rounding', (_name, t) => {
    const m = inAttic(model);
    const flows = solveFlows(m, { supplyTemperature: t.leaving, returnTemperature: t.indoor });
    const heat = ductHeat(m, flows, { ...t, below: 5, returnTemperature: t.indoor });
    const capacity = airDensity(t.indoor, m.pressure) * 1006;
    const unit = flows.flow * capacity * (t.leaving - heat.entering);
    // Air that leaks out and air that leaks in need not be equal: the rooms' own leaks make up the difference.
    const madeUp = capacity * (flows.returnLeak - flows.supplyLeak) * (t.indoor - t.attic);
    expect((heat.delivered + heat.heatToAttic + madeUp) / unit).toBeCloseTo(1, 12);
  });

  it('loses nothing to anybody but the rooms where the ducts lie in them', () => {
    const m = { ...model, sections: model.sections.map((x) => ({ ...x, place: 'inside' as const })) };
    const flows = solveFlows(m, { supplyTemperature: 38, returnTemperature: 20 });
    const at = { leaving: 38, indoor: 20, attic: -9, below: 5, returnTemperature: 20 };
    const heat = ductHeat(m, flows, at);
    expect(heat.heatToAttic).toBe(0);
    expect(heat.delivered / (flows.flow * airDensity(20, m.pressure) * 1006 * (38 - heat.entering))).toBeCloseTo(1, 12);
  });

  it('loses nothing where there are no leaks and the attic is as warm as the air', () => {
    const m = tight(inAttic(model));
    const flows = solveFlows(m, still);
    expect(ductHeat(m, flows, { leaving: 20, indoor: 20, attic: 20, below: 20, returnTemperature: 20 })).toMatchObject({
      entering: 20,
      heatToAttic: 0,
      delivered: 0,
    });
  });

  it('loses less the thicker the insulation', () => {
    const lost = [0.7, 1.4, 2.8].map((insulation) => {
      const m = { ...model, sections: model.sections.map((x) => ({ ...x, insulation })) };
      return ductHeat(m, solveFlows(m, still), { leaving: 40, indoor: 20, attic: -5, below: 5, returnTemperature: 20 })
        .heatToAttic;
    });
    expect(lost).toEqual([...lost].sort((a, b) => b - a));
  });
});

describe('what flows', () => {
  it('leaks what each section is said to leak, and nothing else is lost', () => {
    const f = solveFlows(model, still);
    const out = model.terminals.reduce((a, t) => a + (t.id.startsWith('reg') ? (f.terminals[t.id] ?? 0) : 0), 0);
    expect(out + f.supplyLeak).toBeCloseTo(f.flow, 12);
  });

  it('in air half as dense moves about the same volume against half the pressure (fan laws)', () => {
    const thin = solveFlows(
      { ...model, pressure: model.pressure / 2, filter: { ...model.filter, pressure: 0 } },
      still,
    );
    const dense = solveFlows({ ...model, filter: { ...model.filter, pressure: 0 } }, still);
    expect(thin.flow / dense.flow).toBeCloseTo(1, 1);
    expect(thin.staticPressure / dense.staticPressure).toBeCloseTo(0.5, 1);
  });

  it('goes to the other rooms when a register is shut', () => {
    const shut = {
      ...model,
      terminals: model.terminals.map((t) => (t.id === 'reg-bath' ? { ...t, resistance: t.resistance * 1e8 } : t)),
    };
    const [before, after] = [solveFlows(model, still), solveFlows(shut, still)];
    expect(after.terminals['reg-bath']).toBeLessThan(1e-4);
    expect(after.terminals['reg-work'] ?? 0).toBeGreaterThan(before.terminals['reg-work'] ?? 0);
    expect(after.flow).toBeLessThan(before.flow);
  });

  it('a proposed change really does what it says', () => {
    const change = smallestChange(
      model,
      model.sections.map((x) => x.id),
      (f) => f.staticPressure <= 124.5,
    );
    expect(change?.section.side).toBe('return');
    expect(change?.flows.staticPressure).toBeLessThanOrEqual(124.5);
    expect(solveFlows(model, still).staticPressure).toBeGreaterThan(124.5);
  });
});

describe('ducts that make no tree', () => {
  const modelOf = (
    change: (
      sections: Record<string, Record<string, unknown>>,
      terminals: Record<string, Record<string, unknown>>,
    ) => void,
  ) => {
    const copy = structuredClone(project) as unknown as {
      routes: {
        ducts: {
          sections: Record<string, Record<string, unknown>>;
          terminals: Record<string, Record<string, unknown>>;
        };
      };
    };
    change(copy.routes.ducts.sections, copy.routes.ducts.terminals);
    const { ducts } = resolveProject(copy as unknown as Project).routes;
    if (!blower) throw new Error('the chosen unit has a blower');
    return attempt(() => airModel(ducts, blower, 101_325, scenario()));
  };

  it.each<[string, Parameters<typeof modelOf>[0], string]>([
    ['a circle', (s) => Object.assign(s['supply-plenum'] ?? {}, { from: 'supply-bath' }), 'from'],
    [
      'a way to nowhere',
      (s) => Object.assign(s['supply-bath'] ?? {}, { from: 'gone' }),
      'routes.ducts.sections.supply-bath.from',
    ],
    [
      'a supply that joins the return',
      (s) => Object.assign(s['supply-bath'] ?? {}, { from: 'return-box' }),
      'routes.ducts.sections.supply-bath.from',
    ],
    [
      'a register at no duct',
      (_s, t) => Object.assign(t['reg-bath'] ?? {}, { section: 'gone' }),
      'routes.ducts.terminals.reg-bath.section',
    ],
    [
      'a bend that no table covers',
      (s) =>
        Object.assign(s['supply-bath'] ?? {}, {
          fittings: { b: { kind: 'elbow-round', radius: { value: 9, known: 'measured' } } },
        }),
      'routes.ducts.sections.supply-bath.fittings.b.radius',
    ],
    ['a duct without a size', (s) => delete s['supply-bath']?.diameter, 'routes.ducts.sections.supply-bath.diameter'],
  ])('%s is named by its place', (_name, change, path) => {
    const built = modelOf(change);
    expect(built.ok).toBe(false);
    expect(built.ok ? '' : built.paths.join()).toContain(path);
  });
});
