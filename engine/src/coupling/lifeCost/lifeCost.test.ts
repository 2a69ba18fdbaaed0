import type { Project } from '@kneewall/project';
import { resolveProject } from '@kneewall/project';
import { beforeAll, describe, expect, it } from 'vitest';
import { demo } from '../../../test/demos.ts';
import { evaluate } from '../../index.ts';
import type { Outcome } from '../../plan/outcome.ts';
import type { Figures } from '../power/helps/figures.ts';
import { lifeCost } from './lifeCost.ts';
import type { LifeCosts } from './lifeCosts.ts';
import type { YearsFrom } from './unitYears.ts';

const figures = (litres: number, generator = 0, stove = 0): Figures => ({
  ...{ generator, litres, stove },
  ...{ starts: 0, held: 0, cold: 0, coldMornings: 0, householdShort: 0, cycles: 0 },
});
const plain = (value: number) => ({ value, known: 'nameplate' as const });

/** Invented years for the units of Tern Ledge: only the arithmetic that follows them is under test. */
function onOwnPower(project: Project, litres: Readonly<Record<string, number>>): YearsFrom {
  const { trades, season } = evaluate(project, {}).plan;
  const { 'unit-24': base = 0, ...others } = litres;
  const units = Object.entries(others).map(([id, x]) => ({ id, year: figures(x, x / 2, 10) }));
  const powerHelps = { ok: true, value: { base: figures(base, base / 2, 10), units, ranked: [], aged: [] } } as const;
  return { project: resolveProject(project), trades, season: { ...season, powerHelps } };
}

const tern = demo('tern-ledge');
const got = (found: Outcome<LifeCosts>): LifeCosts => {
  if (!found.ok) throw new Error(`not known: ${found.because} ${found.paths.join(' ')}`);
  return found.value;
};
const changed = (life: NonNullable<Project['work']>['life']): Project => ({
  ...tern,
  candidates: { ...tern.candidates, twin: { ...tern.candidates?.['unit-24'], chosen: false, name: 'A twin' } },
  work: { ...tern.work, life: { generatorHour: plain(0.5), otherHeat: plain(0.1), ...life } },
});
const litres = { 'unit-18': 3500, 'unit-24': 1000, 'unit-30': 990, twin: 1000 };

describe('what a unit costs over its life', () => {
  let from: YearsFrom;
  let costs: LifeCosts;
  beforeAll(() => {
    from = onOwnPower(changed({}), litres);
    costs = got(lifeCost(from));
  });

  it('is its parts and nothing else', () => {
    expect(costs.units.length).toBe(4);
    for (const { parts, total } of costs.units) {
      const sum = Object.values(parts).reduce((a, x) => a + x, 0);
      expect(Math.abs(sum - total.likely)).toBeLessThan(1e-9 * total.likely);
      expect(total.low).toBeLessThan(total.likely);
      expect(total.high).toBeGreaterThan(total.likely);
    }
  });

  // By hand: 3600 to buy; 15 years of 1000 L at 1.6, 500 h at 0.5, 10 kWh at 0.1, 100 for upkeep.
  it('is 32 865 for the unit that burns a thousand litres', () => {
    const own = costs.units.find((u) => u.chosen);
    expect(own?.total.likely).toBeCloseTo(3600 + 15 * (1600 + 250 + 1 + 100), 6);
    expect(own?.parts.fuel).toBeCloseTo(24_000, 6);
  });

  it('cannot tell a unit from its twin, nor from one that burns a hundredth less; it can where much more is burned', () => {
    const [own, twin, less, more] = ['unit-24', 'twin', 'unit-30', 'unit-18'].map((id) =>
      costs.units.find((u) => u.id === id),
    );
    expect(twin?.total.likely).toBe(own?.total.likely);
    expect(twin?.parts).toEqual(own?.parts);
    expect([own, twin, less].map((u) => u?.apart)).toEqual([false, false, false]);
    expect(more?.apart).toBe(true);
  });

  it('ranks the same whatever the units are called, twins beside each other', () => {
    const places = costs.units.map((u) => u.total.likely);
    expect(places).toEqual([...places].sort((a, b) => a - b));
    const [a, b] = ['unit-24', 'twin'].map((id) => costs.units.findIndex((u) => u.id === id));
    expect(Math.abs((a ?? 0) - (b ?? 9))).toBe(1);
    expect(costs.units[0]?.beyond).toEqual({ low: 0, likely: 0, high: 0 });
  });

  it('is as wide as the log knows what its unit draws, in the place of how true a sheet may be', () => {
    const drawn = (low: number, high: number) => {
      const unit = { ...from.project.candidates['unit-24'] } as (typeof from.project.candidates)[string];
      const power = { path: 'p', kind: 'fraction', known: 'measured', low, likely: 1, high } as const;
      const candidates = { ...from.project.candidates, 'unit-24': { ...unit, learned: { ...unit.learned, power } } };
      return got(lifeCost({ ...from, project: { ...from.project, candidates } })).units.find((u) => u.chosen)?.total;
    };
    const driver = drawn(0.9, 1.1)?.drivers.find((d) => d.path === 'p');
    // All that burns fuel in these years is the unit: a tenth more of 15 years of fuel and wear.
    expect(driver?.atHigh).toBeCloseTo(0.1 * 15 * (1600 + 250 + 1), 6);
    expect(driver?.atLow).toBeCloseTo(-0.1 * 15 * (1600 + 250 + 1), 6);
    expect(drawn(0.99, 1.01)?.high).toBeLessThan(costs.units.find((u) => u.chosen)?.total.high ?? 0);
    expect(drawn(0.8, 1.2)?.high).toBeGreaterThan(costs.units.find((u) => u.chosen)?.total.high ?? 0);
  });

  it('counts coming years less at interest, by the closed form', () => {
    const at = got(lifeCost(onOwnPower(changed({ interest: plain(0.05), years: plain(20) }), litres)));
    const own = at.units.find((u) => u.chosen);
    // (1 - 1.05^-20) / 0.05
    expect(own?.parts.fuel).toBeCloseTo(12.46221034 * 1600, 3);
  });

  it('leaves a unit without a price out and names it', () => {
    const whole = changed({});
    const { price: _gone, ...bare } = whole.candidates?.['unit-18'] ?? {};
    const at = got(lifeCost(onOwnPower({ ...whole, candidates: { ...whole.candidates, 'unit-18': bare } }, litres)));
    expect(at.left.map((x) => x.paths)).toEqual([['candidates.unit-18.price']]);
    expect(at.units.length).toBe(3);
  });

  it('takes off what is granted and meets the tier, and nothing that is only asked for', () => {
    const paper = (status: 'granted' | 'asked', tier?: string) => ({
      ...{ kind: 'incentive' as const, status, amount: plain(500) },
      ...(tier === undefined ? {} : { incentive: { tier } }),
    });
    const off = (papers: NonNullable<Project['paperwork']>, tier?: string): number => {
      const whole = changed({});
      const own = { ...whole.candidates?.['unit-24'], ...(tier === undefined ? {} : { tier }) };
      const project = { ...whole, paperwork: papers, candidates: { ...whole.candidates, 'unit-24': own } };
      const at = got(lifeCost({ ...from, project: resolveProject(project) }));
      return at.units.find((u) => u.chosen)?.parts.incentive ?? Number.NaN;
    };
    expect(off({ a: paper('granted') })).toBe(-500);
    expect(off({ a: paper('asked') })).toBe(0);
    expect(off({ a: paper('granted', 'Tier 2') })).toBe(0);
    expect(off({ a: paper('granted', 'Tier 2') }, ' tier  2')).toBe(-500);
  });

  it('waits for the years that are not run yet', () => {
    const powerHelps = { ok: false, because: 'pending', paths: ['x'] } as const;
    expect(lifeCost({ ...from, season: { ...from.season, powerHelps } })).toEqual(powerHelps);
  });
});

describe('on the grid', () => {
  const flat = demo('juniper-flat');
  const twin = { ...flat.candidates?.['unit-24'], chosen: false, name: 'A twin' };
  const year = {
    heating: { heat: 9000, compressor: 3000, strips: 0 },
    cooling: { sensible: 3000, latent: 1000, compressor: 1000 },
  };
  const bills = { all: { total: 1500 }, without: { total: 1000 } };
  const of = (project: Project): LifeCosts => {
    const { trades, season } = evaluate(project, {}).plan;
    const unitYear = { ok: true, value: year } as unknown as typeof season.unitYear;
    const gridYear = {
      ok: true,
      value: { unit: 4300, household: 0, sun: 0, bills },
    } as unknown as typeof season.gridYear;
    return got(lifeCost({ project: resolveProject(project), trades, season: { ...season, unitYear, gridYear } }));
  };

  it('is the bill with the unit less the bill without it, for its twin too', () => {
    const { units } = of({ ...flat, candidates: { ...flat.candidates, twin } });
    expect(units.length).toBe(2);
    for (const u of units) {
      expect(u.takes.energy).toBeCloseTo(4300, 9);
      expect(u.parts.electricity + u.parts.backup).toBeCloseTo(15 * 500, 6);
      expect(u.apart).toBe(false);
    }
  });

  it('grows with standby by its watts over the hours of a year', () => {
    const thirsty = { ...twin, electrics: { ...twin.electrics, standby: plain(115) } };
    const [a, b] = of({ ...flat, candidates: { ...flat.candidates, twin, thirsty } }).units.filter(
      (u) => u.id !== 'unit-24',
    );
    const standby = flat.candidates?.['unit-24']?.electrics?.standby?.value ?? 15;
    expect((b?.takes.energy ?? 0) - (a?.takes.energy ?? 0)).toBeCloseTo(8.76 * (115 - Number(standby)), 6);
  });
});
