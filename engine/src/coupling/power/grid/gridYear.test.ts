import { demos } from '@kneewall/demos';
import type { Project } from '@kneewall/project';
import { beforeAll, describe, expect, it } from 'vitest';
import { evaluate, type Job, runJob } from '../../../index.ts';
import { weatherOfYear } from '../../houseYear/table.ts';
import { prepare } from '../powerRun.ts';
import type { GridYear } from './gridYear.ts';
import type { GridYearInputs } from './gridYearJob.ts';
import { type RideThrough, rideThrough } from './rideThrough.ts';

const none = (): never => {
  throw new Error('no file');
};
let flat: Project;
let job: Job;
let inputs: GridYearInputs;
let year: GridYear;

beforeAll(async () => {
  flat = (await demos.find((d) => d.id === 'juniper-flat')?.load()) as Project;
  job = evaluate(flat, {}).wanted.find((j) => j.kind === 'coupling/grid-year') as Job;
  inputs = { ...(job.inputs as GridYearInputs), step: 3600 };
  year = runJob({ ...job, inputs }, { blob: () => undefined, tell: () => {} }) as GridYear;
});

describe('a year on the grid', () => {
  it('splits the unit’s energy over the bands without losing any, and its money over the months', () => {
    const { all, without } = year.bills ?? {};
    const sum = (x: readonly number[] = []): number => x.reduce((a, b) => a + b, 0);
    const energy = sum(all?.bands.map((b) => b.energy)) - sum(without?.bands.map((b) => b.energy));
    expect(energy).toBeCloseTo(year.unit, 6);
    expect(sum(without?.bands.map((b) => b.energy))).toBeCloseTo(year.household, 6);
    expect(sum(all?.months)).toBeCloseTo(all?.total ?? 0, 6);
    expect(year.household).toBeCloseTo(13 * 365, 6);
  });

  it('puts both into findings whose working ends in the value', () => {
    const { plan } = evaluate(flat, { [job.key]: year });
    const own = plan.findings.filter((f) => f.trade === 'offgrid');
    expect(own.map((f) => f.id).toSorted()).toEqual(['offgrid/grid-cost', 'offgrid/outage-heat']);
    for (const f of own) {
      expect(f.value).toBe(plan.workings[f.working]?.at(-1)?.value);
      expect(`${f.what} ${f.mend}`).not.toMatch(/NaN|undefined|Infinity/);
    }
  });
});

describe('an outage on the coldest day', () => {
  const through = (change: (x: GridYearInputs['power']) => GridYearInputs['power']): RideThrough => {
    const changed = { ...inputs, power: change(inputs.power) };
    const weather = weatherOfYear(changed.weather, none);
    return rideThrough(changed, weather, prepare(changed, weather));
  };
  it('lasts longer with a larger battery, all three days with a huge one, and no hour through a tiny inverter', () => {
    const larger = through((x) => ({ ...x, battery: { ...x.battery, energy: 3 * x.battery.energy } }));
    expect(larger.heat).toBeGreaterThan(2 * (year.outage?.heat ?? 0));
    expect(larger.afterDay).toBeGreaterThanOrEqual(year.outage?.afterDay ?? 0);
    const huge = through((x) => ({ ...x, battery: { ...x.battery, energy: 500 } }));
    expect([huge.heat, huge.warm]).toEqual([72, 72]);
    expect(through((x) => ({ ...x, inverter: { ...x.inverter, most: 50 } })).heat).toBeLessThanOrEqual(1);
  });

  it('is counted over a start on each day, and none of them is harder than the one told', () => {
    const { through = [], starts, heat = 0 } = year.outage ?? {};
    expect(starts).toBe(365);
    expect(through.map((t) => t.hours)).toEqual([4, 8, 24]);
    for (const [i, t] of through.entries()) {
      expect(t.starts).toBeLessThanOrEqual(through[i - 1]?.starts ?? 365);
      if (heat >= t.hours) expect(t.starts).toBe(365);
    }
    expect(through.at(-1)?.starts).toBeGreaterThan(0);
  });

  it('draws no more than the battery holds', () => {
    const { battery, inverter } = inputs.power;
    // What never rests and the household alone: no unit that heats draws less than its lowest speed then.
    const least = ((inputs.power.household.daily * inputs.power.household.essential) / 24) * 1000 + inverter.idle;
    expect((year.outage?.heat ?? 0) * least).toBeLessThan(battery.energy * 1000);
  });
});
