import { emptyProject, type Project } from '@kneewall/project';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { demo } from '../../test/demos.ts';
import { evaluate, type Finding } from '../index.ts';
import { allowedAmpacity, thinnestFor } from './wires/ampacity.ts';
import { gaugeArea, gaugeExactly } from './wires/gauges.ts';
import { groundingGauge } from './wires/grounding.ts';
import { standardBelow } from './wires/protection.ts';
import { ampacityTable, type Column, columns, standardSizes } from './wires/tables.ts';

type Tree = { [key: string]: unknown };
/** A demo with single entries changed; undefined takes one out. */
function changed(name: 'tern-ledge' | 'juniper-flat', changes: Readonly<Record<string, unknown>>): Project {
  const project = structuredClone(demo(name)) as unknown as Tree;
  for (const [path, value] of Object.entries(changes)) {
    const keys = path.split('.');
    const last = keys.pop() ?? '';
    const parent = keys.reduce<Tree>((tree, key) => {
      tree[key] ??= {};
      return tree[key] as Tree;
    }, project);
    if (value === undefined) delete parent[last];
    else parent[last] = value;
  }
  return project as unknown as Project;
}
const n = (value: number) => ({ value, known: 'nameplate' });
const found = (project: Project, id: string): Finding => {
  const finding = evaluate(project, {}).plan.findings.find((f) => f.id === id);
  if (!finding) throw new Error(`no finding ${id}`);
  return finding;
};
const likely = ({ value }: Finding): number => (typeof value === 'number' ? value : (value?.likely ?? Number.NaN));
const plate = 'candidates.unit-24.electrics';
const outdoor = 'routes.wires.outdoor';

describe('what a circuit is judged by', () => {
  it('the old unit’s breaker is too large for the new plate, its wires are not too thin', () => {
    expect(found(demo('juniper-flat'), 'circuit/protection:outdoor').status).toBe('fails');
    expect(found(demo('juniper-flat'), 'circuit/wire:outdoor').status).toBe('ok');
  });

  it('a breaker larger than the wires’ ampacity is right where the plate allows it', () => {
    // The published trap: 12 AWG behind 30 A for a plate that asks for 19 A and allows 30 A.
    const project = changed('tern-ledge', {
      [`${plate}.ampacityLeast`]: n(19),
      [`${plate}.protectionMost`]: n(30),
      [`${outdoor}.size`]: n(gaugeArea(12)),
      [`${outdoor}.terminals`]: 'warm',
    });
    expect(found(project, 'circuit/wire:outdoor').status).toBe('ok');
    expect(found(project, 'circuit/protection:outdoor')).toMatchObject({ status: 'ok', value: 30 });
  });

  it('without plate figures the published arithmetic stands in: 19.2 A and 1.1 A ask for 25.1 A and 30 A', () => {
    const project = changed('tern-ledge', {
      [`${plate}.ampacityLeast`]: undefined,
      [`${plate}.protectionMost`]: undefined,
      [`${plate}.compressorCurrent`]: n(19.2),
      [`${plate}.fanCurrent`]: n(1.1),
      [`${plate}.handler.current`]: undefined,
      [`${outdoor}.ambient`]: n(60),
      [`${outdoor}.terminals`]: 'warm',
    });
    const wire = found(project, 'circuit/wire:outdoor');
    expect(wire.limit?.min).toBeCloseTo(25.1, 12);
    // 10 AWG: 40 A x 0.71.
    expect(likely(wire)).toBeCloseTo(28.4, 12);
    expect(found(project, 'circuit/protection:outdoor').value).toBe(30);
  });

  it('a conduit too narrow for its wires fails, an empty field picks one that holds them, cable has none', () => {
    const laid = (changes: Readonly<Record<string, unknown>>) =>
      changed('tern-ledge', {
        [`${outdoor}.laid`]: 'pipe',
        [`${outdoor}.size`]: n(gaugeArea(8)),
        [`${outdoor}.ground`]: n(gaugeArea(8)),
        ...changes,
      });
    // Two of 8 AWG and a ground that the plan sizes by the breaker; half-inch tubing measures 15.8 mm.
    const narrow = found(
      laid({ [`${outdoor}.together`]: n(6), [`${outdoor}.pipe`]: n(0.0158) }),
      'circuit/fill:outdoor',
    );
    expect(narrow.status).toBe('fails');
    expect(narrow.limit?.max).toBe(0.4);
    const picked = found(
      laid({ [`${outdoor}.together`]: n(6), [`${outdoor}.pipe`]: undefined }),
      'circuit/fill:outdoor',
    );
    expect(picked.status).toBe('ok');
    const plan = evaluate(laid({ [`${outdoor}.laid`]: 'outdoor' }), {}).plan;
    expect(plan.findings.some((f) => f.id === 'circuit/fill:outdoor')).toBe(false);
  });

  it('wires in an attic are sized for the attic’s own hottest hour, not for the house’s', () => {
    // Measured attics under dark shingles peak 20 to 27 K over the air (Parker & Sherwin 1998), hours before the house's load.
    const { plan } = evaluate(demo('juniper-flat'), {});
    const [, handler] = plan.trades.circuit?.runs ?? [];
    if (!handler?.ambient.ok || !handler.conductor.ok) throw new Error('both are known');
    expect(handler.ambient.value.likely - 36).toBeGreaterThan(20);
    expect(handler.ambient.value.likely - 36).toBeLessThan(27);
    // A plate of 30 A at 61 to 65 °C, NEC table 310.15(B)(1) 0.65: 10 AWG 26 A is too little, 8 AWG 35.75 A.
    expect(handler.ambient.value.high).toBeGreaterThan(61);
    expect(handler.conductor.value.gauge).toBe(8);
  });

  it('a long way takes thicker conductors, and the ground grows with them', () => {
    const runs = (length: number) =>
      evaluate(changed('tern-ledge', { [`${outdoor}.length`]: n(length) }), {}).plan.trades.circuit?.runs[0];
    const [near, far] = [runs(20), runs(90)];
    if (!near?.conductor.ok || !far?.conductor.ok || !near.ground.ok || !far.ground.ok || !far.drop.ok)
      throw new Error('both are known');
    expect(far.conductor.value.area).toBeGreaterThan(near.conductor.value.area);
    expect(far.ground.value.area).toBeGreaterThan(near.ground.value.area);
    expect(far.drop.value.share.high).toBeLessThanOrEqual(0.03);
  });

  it('a compressor that is switched straight on is asked for its starting current, and counts in the worst second', () => {
    const straight = { [`${plate}.starts`]: 'straight', [`${plate}.startCurrent`]: undefined };
    expect(found(changed('tern-ledge', straight), 'circuit/surge')).toMatchObject({
      status: 'unknown',
      because: 'missing',
    });
    // 70 A at 240 V are 16.8 kVA, computed outside; the rest that runs beside it comes on top.
    const known = changed('tern-ledge', { ...straight, [`${plate}.startCurrent`]: n(70) });
    expect(likely(found(known, 'circuit/surge'))).toBeCloseTo(16_800 + 1600, 9);
    expect(found(known, 'circuit/surge').status).toBe('fails');
    expect(found(known, 'circuit/starting:outdoor').status).toBe('ok');
  });

  it('air hotter than the insulation allows is said to be beyond the tables, never to be fine', () => {
    const project = changed('tern-ledge', { [`${outdoor}.ambient`]: n(68), [`${outdoor}.laid`]: 'outdoor' });
    expect(found(project, 'circuit/wire:outdoor')).toMatchObject({ status: 'unknown', because: 'out-of-range' });
    const own = changed('tern-ledge', {
      [`${outdoor}.ambient`]: n(68),
      [`${outdoor}.laid`]: 'outdoor',
      [`${outdoor}.size`]: n(gaugeArea(6)),
    });
    expect(found(own, 'circuit/wire:outdoor').status).toBe('fails');
  });

  it('wire thinner than any allowed carries nothing', () => {
    const thin = found(changed('tern-ledge', { [`${outdoor}.size`]: n(0.75) }), 'circuit/wire:outdoor');
    expect(thin.status).toBe('fails');
    expect(likely(thin)).toBe(0);
  });

  it('a metric conductor counts as the next thinner gauge', () => {
    const metric = found(changed('tern-ledge', { [`${outdoor}.size`]: n(4) }), 'circuit/wire:outdoor');
    expect(likely(metric)).toBe(20);
  });

  it('a supply without voltage or length makes nothing infinite', () => {
    for (const change of [
      { 'power.voltage': n(0) },
      { [`${outdoor}.length`]: n(0) },
      { 'power.battery.voltage': n(0) },
    ]) {
      const { plan } = evaluate(changed('tern-ledge', change), {});
      expect(JSON.stringify(plan.trades.circuit)).not.toMatch(/null|NaN|Infinity/);
      expect(plan.findings.every((f) => f.because !== 'fault')).toBe(true);
    }
  });

  it('wire and fuse carry what the inverter draws when the battery is lowest', () => {
    const battery = (change: Parameters<typeof changed>[1]) => {
      const { circuit } = evaluate(changed('tern-ledge', change), {}).plan.trades;
      return circuit?.battery?.ok ? circuit.battery.value : undefined;
    };
    // Published example of sizing by the National Electrical Code (looked up): 2.5 kW, 24 V, shut off at 22 V, 0.85.
    const published = battery({
      'power.inverter.continuous': n(2500),
      'power.inverter.efficiency': n(0.85),
      'power.inverter.voltageLeast': n(22),
      'power.battery.voltage': n(24),
    });
    expect(published?.current).toBeCloseTo(134, -0.3);
    expect(published?.fuse).toBeCloseTo(167, -0.3);
    // Sixteen cells of 3.2 V, shut off at 2.8 V: 6000 / (16 * 2.8 * 0.93), by hand.
    expect(battery({})?.current).toBeCloseTo(144.01, 2);
  });

  it('a 240 V unit at an inverter of 120 V is told so', () => {
    expect(found(changed('tern-ledge', { 'power.inverter.legs': 'low' }), 'circuit/output').status).toBe('fails');
  });

  it('every finding, task and electrical reading carries its caution', () => {
    for (const name of ['tern-ledge', 'juniper-flat'] as const) {
      const { plan } = evaluate(demo(name), {});
      const own = <T extends { readonly trade: string }>(list: readonly T[]) =>
        list.filter((x) => x.trade === 'circuit');
      expect(own(plan.findings).length).toBeGreaterThan(5);
      for (const f of own(plan.findings)) expect(f.caution?.length, f.id).toBeGreaterThan(40);
      for (const t of own(plan.tasks)) {
        expect(t.cautions.length, t.id).toBeGreaterThan(0);
        expect(t.safeStops.length, t.id).toBeGreaterThan(0);
      }
      for (const r of own(plan.readings)) expect(r.caution?.length, r.id).toBeGreaterThan(40);
    }
  });

  it('never puts a breaker above the plate on the shopping list', () => {
    const { plan } = evaluate(demo('juniper-flat'), {});
    expect(plan.materials.find((m) => m.id === 'circuit/protection:outdoor')?.what).toContain('25 A');
  });

  it('says once that a unit comes first', () => {
    const own = evaluate(emptyProject, {}).plan.findings.filter((f) => f.trade === 'circuit');
    expect(own.map((f) => f.status)).toEqual(['unknown']);
  });
});

describe('the tables keep their order', () => {
  const gauges = ampacityTable.copper.map((r) => r.n);
  const metal = fc.constantFrom('copper' as const, 'aluminium' as const);
  const column = fc.constantFrom<Column>(...columns);

  it('a thicker conductor never carries less, hotter air or more neighbours never let it carry more', () => {
    fc.assert(
      fc.property(
        metal,
        column,
        column,
        fc.double({ min: 5, max: 70, noNaN: true }),
        fc.integer({ min: 1, max: 40 }),
        fc.nat({ max: gauges.length - 2 }),
        (m, insulation, terminals, ambient, together, i) => {
          const at = (n: number | undefined, t: number, count: number) =>
            n === undefined
              ? undefined
              : allowedAmpacity(n, { metal: m, insulation, terminals, ambient: t, together: count })?.ampacity;
          const here = at(gauges[i], ambient, together);
          const thicker = at(gauges[i + 1], ambient, together);
          if (here === undefined || thicker === undefined) return;
          expect(thicker).toBeGreaterThanOrEqual(here);
          expect(at(gauges[i], ambient + 5, together) ?? 0).toBeLessThanOrEqual(here);
          expect(at(gauges[i], ambient, together + 3) ?? 0).toBeLessThanOrEqual(here);
        },
      ),
      { seed: 7, numRuns: 300 },
    );
  });

  it('the thinnest that will do does, and the next thinner does not', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 90, noNaN: true }), fc.integer({ min: 20, max: 65 }), (current, ambient) => {
        const laid = { metal: 'copper', insulation: 90, terminals: 75, ambient, together: 3 } as const;
        const n = thinnestFor(current, laid);
        if (n === undefined) return;
        const i = gauges.indexOf(n);
        expect(allowedAmpacity(n, laid)?.ampacity).toBeGreaterThanOrEqual(current - 1e-9);
        const thinner = gauges[i - 1];
        if (thinner !== undefined) expect(allowedAmpacity(thinner, laid)?.ampacity).toBeLessThan(current);
      }),
      { seed: 7, numRuns: 300 },
    );
  });

  it('protection is a standard size at or below the most, and never below 15 A', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 150, noNaN: true }), (most) => {
        const size = standardBelow(most);
        expect(standardSizes).toContain(size);
        expect(size).toBeLessThanOrEqual(Math.max(15, most + 1e-6));
      }),
      { seed: 7, numRuns: 300 },
    );
  });

  it('a ground only grows with its conductors, and a gauge is known by its area', () => {
    expect(groundingGauge(25, 'copper', 1)).toBe(10);
    expect(groundingGauge(25, 'copper', 0.5)).toBe(10);
    expect(groundingGauge(300)).toBeUndefined();
    for (const n of gauges) expect(gaugeExactly(gaugeArea(n))).toBe(n);
    expect(gaugeExactly(6)).toBeUndefined();
  });
});
