import { demos } from '@kneewall/demos';
import type { Project } from '@kneewall/project';
import { beforeAll, describe, expect, it } from 'vitest';
import { evaluate, type Job, runJob } from '../../index.ts';
import { outputFor, powerFor, unitMoment } from '../season/unitPower.ts';
import type { PowerYear } from './powerAnswers.ts';
import type { PowerYearInputs } from './powerYearJob.ts';

const host = { blob: () => undefined, tell: () => {} };
let job: Job;
let year: PowerYear;
/** Hours instead of quarters are enough here. */
const run = (change: (x: PowerYearInputs['power']) => PowerYearInputs['power']): PowerYear => {
  const given = job.inputs as PowerYearInputs;
  return runJob({ ...job, inputs: { ...given, power: change(given.power), step: 3600 } }, host) as PowerYear;
};
/** The stove left out, which the demo has: it would hide how cold it gets. */
const noStove = ({ stove: _none, ...x }: PowerYearInputs['power']) => x;
const loadProject = async (id: string): Promise<Project> => (await demos.find((d) => d.id === id)?.load()) as Project;

beforeAll(async () => {
  const wanted = evaluate(await loadProject('tern-ledge'), {}).wanted.find((j) => j.kind === 'coupling/power-year');
  if (!wanted) throw new Error('the year on own power is wanted');
  job = wanted;
  year = run(noStove);
}, 120_000);

describe('a year on own power', () => {
  it('closes in energy at every step', () => {
    expect(year.residual).toBeLessThanOrEqual(1e-9);
  });

  it('turns sun away on cold mornings in an unheated shed, and not in a heated room or a warm box', () => {
    expect(year.coldMornings).toBeGreaterThan(30);
    expect(run((x) => ({ ...x, battery: { ...x.battery, place: 'heated' } })).coldMornings).toBe(0);
    const boxed = run((x) => ({ ...x, battery: { ...x.battery, boxLoss: 1.5, heater: 150 } }));
    expect(boxed.coldMornings).toBeLessThan(0.2 * year.coldMornings);
  }, 60_000);

  it('cools the house where the battery gives out and no generator starts', () => {
    expect(year.heat.hours).toBe(0);
    expect(year.withoutGenerator?.hours).toBeGreaterThan(1000);
    expect(year.withoutGenerator?.lowest).toBeLessThan(year.heat.lowest - 5);
    expect(year.withoutGenerator?.missing).toBeGreaterThan(1000);
  });

  it('is kept from the cold by a stove that needs no power', () => {
    const stove = run((x) => ({ ...x, stove: { heat: 9000, lightBelow: 1 } }));
    expect(stove.withoutGenerator?.lowest).toBeGreaterThan((year.withoutGenerator?.lowest ?? 0) + 10);
    const small = run((x) => ({ ...x, stove: { heat: 3000, lightBelow: 1 } }));
    expect(small.withoutGenerator?.cold).toBeLessThan(year.withoutGenerator?.cold ?? 0);
    expect(stove.withoutGenerator?.cold).toBeLessThan(0.5 * (small.withoutGenerator?.cold ?? 0));
    expect(stove.withoutGenerator?.stove).toBeGreaterThan(1000);
    expect(stove.heat.burning).toBe(0);
  }, 60_000);

  it('lasts where there is sun and battery in plenty, and then burns nothing', () => {
    const plenty = run((x) => ({
      ...x,
      arrays: x.arrays.map((a) => ({ ...a, rated: a.rated * 60, snow: 0 })),
      battery: { ...x.battery, place: 'heated', energy: x.battery.energy * 30 },
      inverter: { ...x.inverter, most: 20_000 },
    }));
    expect(plenty.generator?.hours).toBe(0);
    expect(plenty.withoutGenerator?.hours).toBe(0);
    expect(plenty.emptyNights.nights).toBe(0);
  }, 60_000);

  it('keeps the house longer from harm where the household goes first', () => {
    const without = ({ generator: _none, ...x }: PowerYearInputs['power']) => x;
    const heatLast = run((x) => ({ ...without(x), household: { ...x.household, shedFirst: 'heat' } }));
    const heatFirst = run((x) => ({ ...without(x), household: { ...x.household, essential: 0 } }));
    expect(heatFirst.heat.hours).toBeLessThanOrEqual(heatLast.heat.hours);
    expect(heatFirst.householdShort).toBeGreaterThan(heatLast.householdShort);
  }, 60_000);

  it('draws more of the generator with half the panels', () => {
    const half = run((x) => ({ ...x, arrays: x.arrays.map((a) => ({ ...a, rated: a.rated / 2 })) }));
    expect(half.generator?.hours).toBeGreaterThan(year.generator?.hours ?? 0);
    // The replayed demand says the same of the same sizes, nearly: nothing held the unit back.
    const [, same = []] = year.sizes.hours;
    expect(same[1]).toBeGreaterThan(0.9 * (year.generator?.hours ?? 0));
    expect(same[1]).toBeLessThan(1.1 * (year.generator?.hours ?? 0));
  }, 60_000);

  it('shows a week in which the sun falls short, hour by hour', () => {
    const { load, sun, charge } = year.darkWeek;
    expect([load, sun, charge].map((x) => x.length)).toEqual([168, 168, 168]);
    const sum = (x: readonly number[]) => x.reduce((a, b) => a + b, 0);
    expect(sum(sun)).toBeLessThan(sum(load));
    for (const share of charge) expect(share).toBeGreaterThanOrEqual(0);
  });
});

describe('findings of own power', () => {
  it('fail the cold cells of the shed, and are none on the grid', async () => {
    const { plan } = evaluate(await loadProject('tern-ledge'), { [job.key]: year });
    expect(plan.findings.find((f) => f.id === 'offgrid/cold-cells')?.status).toBe('fails');
    const own = plan.findings.filter((f) => f.trade === 'offgrid');
    expect(own.filter((f) => f.because !== 'pending').length).toBe(9);
    expect(own.length).toBe(17);
    for (const f of own.filter((x) => x.status !== 'unknown')) {
      const value = typeof f.value === 'number' ? f.value : f.value?.likely;
      expect(value, f.id).toBe(plan.workings[f.working]?.at(-1)?.value);
      expect(`${f.what} ${f.why} ${f.mend}`).not.toMatch(/NaN|undefined|Infinity/);
    }
    const flat = await loadProject('juniper-flat');
    const { tariff: _tariff, battery: _battery, ...bare } = flat.power ?? {};
    const grid = evaluate({ ...flat, power: bare }, {});
    expect(grid.plan.findings.filter((f) => f.trade === 'offgrid')).toEqual([]);
    expect(grid.wanted.filter((j) => j.kind === 'coupling/power-year')).toEqual([]);
  });
});

describe('what so many watts can make', () => {
  const rows = [
    { mode: 'heating', speed: 'least', outdoor: 0, indoor: 21, capacity: 2000, power: 500, defrostCounted: true },
    { mode: 'heating', speed: 'most', outdoor: 0, indoor: 21, capacity: 6000, power: 2000, defrostCounted: true },
  ] as const;
  const moment = unitMoment({ id: 'u', name: 'u', rows }, 'heating', 0, 101_325);
  it('undoes what so much heat draws', () => {
    for (const heat of [1, 500, 1999, 2000, 3500, 6000])
      expect(outputFor(moment, powerFor(moment, heat))).toBeCloseTo(heat, 6);
    expect(outputFor(moment, 9000)).toBe(6000);
    expect(outputFor(moment, 0)).toBe(0);
  });
});
