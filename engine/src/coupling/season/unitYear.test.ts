import { demos } from '@kneewall/demos';
import type { Project } from '@kneewall/project';
import { beforeAll, describe, expect, it } from 'vitest';
import { evaluate, type Job, runJob } from '../../index.ts';
import type { UnitYear } from './unitAnswers.ts';
import { powerFor, unitMoment } from './unitPower.ts';
import type { UnitYearInputs } from './unitYearJob.ts';

const host = { blob: () => undefined, tell: () => {} };

let project: Project;
let job: Job;
let year: UnitYear;
/** Hours instead of quarters are enough here. */
const run = (change: (x: UnitYearInputs) => UnitYearInputs): UnitYear =>
  runJob({ ...job, inputs: change({ ...(job.inputs as UnitYearInputs), step: 3600 }) }, host) as UnitYear;

beforeAll(async () => {
  project = (await demos.find((d) => d.id === 'tern-ledge')?.load()) as Project;
  const wanted = evaluate(project, {}).wanted.find((j) => j.kind === 'coupling/unit-year');
  if (!wanted) throw new Error('the year with the unit is wanted');
  job = wanted;
  year = run((x) => x);
});

const heatingHours = (y: UnitYear): number =>
  y.winter.reduce((a, m) => a + m.stopStart + m.holding + m.helped + m.flatOut, 0);

describe('a year with a unit and its ducts', () => {
  it('counts every hour of a month once', () => {
    const days = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
    year.winter.forEach((m, i) => {
      const cooled = year.summer[i];
      const sum = [m, cooled].flatMap((x) => (x ? [x.stopStart, x.holding, x.helped, x.flatOut] : []));
      // An hour in which it both heats and cools counts for both; there are few.
      expect(sum.reduce((a, b) => a + b, 0)).toBeLessThanOrEqual(24 * (days[i] ?? 30) * 1.05);
    });
    expect(heatingHours(year)).toBeGreaterThan(4000);
  });

  it('takes more heat with ducts in the attic than with perfect ones, and warms the attic', () => {
    expect(year.heating.heat).toBeGreaterThan(1.05 * year.perfectDucts.heat);
    const none = run((x) => ({
      ...x,
      ducts: {
        ...x.ducts,
        model: {
          ...x.ducts.model,
          sections: x.ducts.model.sections.map((s) => ({ ...s, place: 'inside' as const })),
        },
      },
    }));
    // Ducts inside lose nothing that the rooms do not get.
    expect(none.heating.heat).toBeLessThan(1.03 * none.perfectDucts.heat);
  });

  it('leaves rooms cold that get too little air, and holds the one with the thermostat', () => {
    expect(year.rooms[year.thermostat]?.cold).toBeLessThan(0.01 * heatingHours(year));
    const starved = run((x) => ({
      ...x,
      ducts: {
        ...x.ducts,
        flows: { ...x.ducts.flows, terminals: { ...x.ducts.flows.terminals, 'reg-bed-north': 0 } },
      },
    }));
    expect(Object.keys((job.inputs as UnitYearInputs).ducts.flows.terminals)).toContain('reg-bed-north');
    expect(starved.rooms['bed-north']?.cold).toBeGreaterThan((year.rooms['bed-north']?.cold ?? 0) + 100);
  });

  it('needs the strips where the unit is small, and runs flat out where it has none', () => {
    const half = (x: UnitYearInputs, strips: number): UnitYearInputs => ({
      ...x,
      unit: {
        ...x.unit,
        strips,
        model: {
          ...x.unit.model,
          rows: x.unit.model.rows.map((r) => ({ ...r, capacity: r.capacity / 2, power: r.power / 2 })),
        },
      },
    });
    const helped = run((x) => half(x, 6000));
    expect(helped.heating.strips).toBeGreaterThan(5 * year.heating.strips);
    const alone = run((x) => half(x, 0));
    expect(alone.heating.strips).toBe(0);
    expect(alone.winter.reduce((a, m) => a + m.flatOut, 0)).toBeGreaterThan(500);
    expect(alone.rooms[alone.thermostat]?.cold).toBeGreaterThan(100);
  });
});

describe('what a unit draws', () => {
  const rows = [
    { mode: 'heating', speed: 'least', outdoor: 0, indoor: 21, capacity: 2000, power: 500, defrostCounted: true },
    { mode: 'heating', speed: 'most', outdoor: 0, indoor: 21, capacity: 6000, power: 2000, defrostCounted: true },
  ] as const;
  const moment = unitMoment({ id: 'u', name: 'u', rows }, 'heating', 0, 101_325);

  it('lies on a line between its speeds', () => {
    expect(powerFor(moment, 2000)).toBeCloseTo(500, 9);
    expect(powerFor(moment, 4000)).toBeCloseTo(1250, 9);
    expect(powerFor(moment, 6000)).toBeCloseTo(2000, 9);
  });

  it('stops and starts below the lowest, losing a quarter at the limit of no load', () => {
    // X = 0.5: part-load factor 1 - 0.25 x 0.5.
    expect(powerFor(moment, 1000)).toBeCloseTo(250 / 0.875, 9);
    expect(powerFor(moment, 1e-6) / 1e-6).toBeCloseTo(0.25 / 0.75, 6);
  });
});
