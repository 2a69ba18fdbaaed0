import { demos } from '@kneewall/demos';
import type { Project } from '@kneewall/project';
import { beforeAll, describe, expect, it } from 'vitest';
import { evaluate, type Job, runJob } from '../../index.ts';
import { weatherOfYear } from '../houseYear/table.ts';
import { outputFor, powerFor, unitMoment } from '../season/unitPower.ts';
import { coldMornings } from './coldMornings.ts';
import { emptyNights } from './emptyNights.ts';
import { generatorYear } from './generatorYear.ts';
import { type HeldBack, heldBack, type PowerYear } from './powerAnswers.ts';
import { type Prepared, powerRuns, prepare } from './powerRun.ts';
import type { PowerYearInputs } from './powerYearJob.ts';
import type { PowerRun, PowerWay } from './runWay.ts';

const host = { blob: () => undefined, tell: () => {} };
let job: Job;
let year: PowerYear;
/** Hours instead of quarters are enough here. */
let inputs: PowerYearInputs;
let prepared: Prepared;
type Change = (x: PowerYearInputs['power']) => PowerYearInputs['power'];
const none = (): never => {
  throw new Error('no file');
};
/** One run of another power system: each takes a second or two, and the weather is laid out once. */
const run = (way: PowerWay, change: Change): PowerRun =>
  powerRuns({ ...inputs, power: change(inputs.power) }, weatherOfYear(inputs.weather, none), { prepared }).run(
    way,
    () => {},
  );
const asSet = (change: Change): PowerRun => run('with-generator', change);
/** What its own power keeps from the house; what it would take is not asked here. */
const kept = (made: PowerRun): HeldBack => heldBack(made, made);
const hoursOf = (made: PowerRun): number =>
  inputs.power.generator ? generatorYear(inputs.power.generator, made).hours : Number.NaN;
/** The stove left out, which the demo has: it would hide how cold it gets. */
const noStove = ({ stove: _none, ...x }: PowerYearInputs['power']) => x;
const loadProject = async (id: string): Promise<Project> => (await demos.find((d) => d.id === id)?.load()) as Project;

beforeAll(async () => {
  const wanted = evaluate(await loadProject('tern-ledge'), {}).wanted.find((j) => j.kind === 'coupling/power-year');
  if (!wanted) throw new Error('the year on own power is wanted');
  job = wanted;
  inputs = { ...(job.inputs as PowerYearInputs), step: 3600 };
  prepared = prepare(inputs, weatherOfYear(inputs.weather, none));
  year = runJob({ ...job, inputs: { ...inputs, power: noStove(inputs.power) } }, host) as PowerYear;
});

describe('a year on own power', () => {
  it('closes in energy at every step', () => {
    expect(year.residual).toBeLessThanOrEqual(1e-9);
  });

  it('turns sun away on cold mornings in an unheated shed, and not in a heated room or a warm box', () => {
    expect(year.coldMornings).toBeGreaterThan(30);
    const mornings = (change: Change): number => coldMornings(inputs.power.battery, asSet(change));
    expect(mornings((x) => ({ ...x, battery: { ...x.battery, place: 'heated' } }))).toBe(0);
    expect(mornings((x) => ({ ...x, battery: { ...x.battery, boxLoss: 1.5, heater: 150 } }))).toBeLessThan(
      0.2 * year.coldMornings,
    );
  });

  it('cools the house where the battery gives out and no generator starts', () => {
    expect(year.heat.hours).toBe(0);
    expect(year.withoutGenerator?.hours).toBeGreaterThan(1000);
    expect(year.withoutGenerator?.lowest).toBeLessThan(year.heat.lowest - 5);
    expect(year.withoutGenerator?.missing).toBeGreaterThan(1000);
  });

  it('is kept from the cold by a stove that needs no power', () => {
    const burning =
      (heat: number): Change =>
      (x) => ({ ...x, stove: { heat, lightBelow: 1 } });
    const large = kept(run('without-generator', burning(9000)));
    const small = kept(run('without-generator', burning(3000)));
    expect(large.lowest).toBeGreaterThan((year.withoutGenerator?.lowest ?? 0) + 10);
    expect(small.cold).toBeLessThan(year.withoutGenerator?.cold ?? 0);
    expect(large.cold).toBeLessThan(0.5 * small.cold);
    expect(large.stove).toBeGreaterThan(1000);
    expect(kept(asSet(burning(9000))).burning).toBe(0);
  });

  it('lasts where there is sun and battery in plenty, and then burns nothing', () => {
    const plenty: Change = (x) => ({
      ...x,
      arrays: x.arrays.map((a) => ({ ...a, rated: a.rated * 60, snow: 0 })),
      battery: { ...x.battery, place: 'heated', energy: x.battery.energy * 30 },
      inverter: { ...x.inverter, most: 20_000 },
    });
    expect(hoursOf(asSet(plenty))).toBe(0);
    const alone = run('without-generator', plenty);
    expect(kept(alone).hours).toBe(0);
    expect(emptyNights(alone).nights).toBe(0);
  });

  it('keeps the house longer from harm where the household goes first', () => {
    const without = ({ generator: _none, ...x }: PowerYearInputs['power']) => x;
    const heatLast = asSet((x) => ({ ...without(x), household: { ...x.household, shedFirst: 'heat' } }));
    const heatFirst = asSet((x) => ({ ...without(x), household: { ...x.household, essential: 0 } }));
    const short = ({ record }: PowerRun): number => record.short.reduce((a, b) => a + b, 0);
    expect(kept(heatFirst).hours).toBeLessThanOrEqual(kept(heatLast).hours);
    expect(short(heatFirst)).toBeGreaterThan(short(heatLast));
  });

  it('draws more of the generator with half the panels', () => {
    const half = asSet((x) => ({ ...x, arrays: x.arrays.map((a) => ({ ...a, rated: a.rated / 2 })) }));
    expect(hoursOf(half)).toBeGreaterThan(year.generator?.hours ?? 0);
    // The replayed demand says the same of the same sizes, nearly: nothing held the unit back.
    const [, same = []] = year.sizes.hours;
    expect(same[1]).toBeGreaterThan(0.9 * (year.generator?.hours ?? 0));
    expect(same[1]).toBeLessThan(1.1 * (year.generator?.hours ?? 0));
  });

  it('goes as it would with all the power it wants until something is held back', () => {
    const small: Change = ({ generator, ...x }) => ({
      ...noStove(x),
      inverter: { ...x.inverter, most: 3000 },
      ...(generator ? { generator: { ...generator, rated: 3000 } } : {}),
    });
    for (const change of [noStove, small]) {
      const power = change(inputs.power);
      const ready = powerRuns({ ...inputs, power }, weatherOfYear(inputs.weather, none), { prepared });
      const first = ready.run('unlimited', () => {});
      const set = ready.run('with-generator', () => {});
      expect(ready.run('unlimited', () => {}).record).toEqual(first.record);
      const parts = set.record.held.indexOf(1);
      expect(parts >= 0).toBe(change === small);
      if (parts < 0) expect(set.record.room).toEqual(first.record.room);
      else expect(set.record.room.slice(parts)).not.toEqual(first.record.room.slice(parts));
    }
  });

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
