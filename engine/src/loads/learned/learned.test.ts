import { demos } from '@kneewall/demos';
import { applyEdit, type Project, resolveProject } from '@kneewall/project';
import { beforeAll, describe, expect, it } from 'vitest';
import { evaluate, runJob } from '../../index.ts';
import { runBuilding, startState, weatherSteps } from '../../physics/building/index.ts';
import { scenario } from '../../plan/scenario.ts';
import type { DesignDays } from '../dynamic/daysJob.ts';
import { rowsOfDay } from '../dynamic/designWeather.ts';
import { waveOf } from '../dynamic/ground.ts';
import { houseInputs } from '../dynamic/houseInputs.ts';
import { layOutHouse } from '../dynamic/layOutHouse.ts';
import { outputsAt, type StudyInputs, unknownsOf } from '../dynamic/study.ts';
import type { LoadsResult } from '../result.ts';

type Share = number | { readonly low: number; readonly likely: number; readonly high: number };
const withLoss = (project: Project, value: Share): Project => ({
  ...project,
  house: { ...project.house, learned: { log: 'winter.csv', loss: { value, known: 'measured' } } },
});
const planned = (project: Project) => {
  const { plan, wanted } = evaluate(project, {});
  return { plan, wanted, loads: plan.trades.loads as LoadsResult };
};
const spreadOf = (x: LoadsResult['heating']) => {
  if (!x.ok) throw new Error(x.because);
  return x.value;
};

let tern: Project;
let base: ReturnType<typeof planned>;
let ranged: ReturnType<typeof planned>;
beforeAll(async () => {
  tern = (await demos.find((d) => d.id === 'tern-ledge')?.load()) as Project;
  base = planned(tern);
  ranged = planned(withLoss(tern, { low: 1.1, likely: 1.2, high: 1.3 }));
});

describe('a plan whose loss is scaled by a log', () => {
  it('is the same plan where the log has as much as the plan', () => {
    const { loads, plan, wanted } = planned(withLoss(tern, 1));
    // A study holds the whole house, what was learned of it too: another job, whatever it says.
    const { learned, study: _s, totals: _t, wanted: _w, ...rest } = loads;
    const { study: _s2, totals: _t2, wanted: _w2, ...own } = base.loads;
    expect(learned?.times.likely).toBe(1);
    expect(rest).toEqual(own);
    const others = ({ trades: { loads: _l, ...trades } }: typeof plan) => ({ ...trades, commissioning: undefined });
    expect(others(plan)).toEqual(others(base.plan));
    const keys = (jobs: typeof wanted) => jobs.map((j) => j.key).filter((_, i) => jobs[i]?.kind !== 'loads/study');
    expect(keys(wanted)).toEqual(keys(base.wanted));
  });

  it('loses that many times as much, as a whole and room by room, and its attic is as cold as before', () => {
    const [b, r] = [base.loads, ranged.loads];
    expect(spreadOf(r.lossPerDegree).likely / spreadOf(b.lossPerDegree).likely).toBeCloseTo(1.2, 12);
    expect(spreadOf(r.heating).likely / spreadOf(b.heating).likely).toBeCloseTo(1.2, 12);
    for (const [id, room] of Object.entries(r.rooms))
      expect(spreadOf(room.heating).likely).toBeCloseTo(1.2 * spreadOf(b.rooms[id]?.heating ?? room.heating).likely, 9);
    expect(spreadOf(r.atticNight).likely).toBeCloseTo(spreadOf(b.atticNight).likely, 9);
  });

  it('keeps what the plan says by itself beside it, with its range, and says where the share came from', () => {
    const { learned } = ranged.loads;
    expect(learned?.own.heating).toEqual(base.loads.heating);
    const found = ranged.plan.findings.find((f) => f.id === 'loads/learned-loss');
    expect(found?.value).toEqual({ low: 1.1, likely: 1.2, high: 1.3 });
    expect(found?.what).toContain('winter.csv');
    expect(base.plan.findings.some((f) => f.id.startsWith('loads/learned'))).toBe(false);
  });

  it('says where something is marked measured that does not go with it', () => {
    const tight = { ...tern, house: { ...tern.house, airtightness: { value: 9, known: 'measured' as const } } };
    const { findings } = planned(withLoss(tight, { low: 1.1, likely: 1.2, high: 1.3 })).plan;
    const against = findings.find((f) => f.id === 'loads/learned-against');
    expect(against?.status).toBe('fails');
    expect(against?.what).toContain('Blower-door figure');
  });

  it('is as well known as the log knows it: its range comes through, and its own unknowns no longer widen it', () => {
    const [b, r] = [spreadOf(base.loads.lossPerDegree), spreadOf(ranged.loads.lossPerDegree)];
    const driver = r.drivers.find((d) => d.path === 'house.learned.loss');
    // A share of 1.1 to 1.3 of the plan's own, by hand.
    expect(driver?.atHigh).toBeCloseTo(0.1 * b.likely, 6);
    expect(driver?.atLow).toBeCloseTo(-0.1 * b.likely, 6);
    expect(r.high - r.likely).toBeGreaterThanOrEqual(0.1 * b.likely);
    expect((r.high - r.low) / r.likely).toBeLessThan((b.high - b.low) / b.likely);
    const wall = (x: typeof b) => x.drivers.find((d) => d.path.includes('wool.conductivity'))?.atHigh ?? 0;
    // The whole is held in a log's usual weather; on the cold night, with more wind, a little of each part is left.
    expect(Math.abs(wall(r))).toBeLessThan(0.25 * Math.abs(wall(b)));
  });

  it('goes into the study’s samples in the same way', () => {
    const inputs = ranged.wanted.find((j) => j.kind === 'loads/study')?.inputs as StudyInputs;
    const unknowns = unknownsOf(inputs);
    const at = unknowns.findIndex((g) => g.path === 'house.learned.loss');
    expect(at).toBeGreaterThanOrEqual(0);
    const night = (place: number): number => {
      const point = unknowns.map((_, d) => (d === at ? place : 0.5));
      return outputsAt(inputs, unknowns, point)[0] ?? Number.NaN;
    };
    // The ends of a triangle of 1.1 and 1.3; walls that hold heat back take a little off.
    expect(night(1) / night(0)).toBeCloseTo(1.3 / 1.1, 2);
  });

  it('has design days that agree with its steady sums as before', () => {
    const nightOf = ({ wanted }: typeof base): number => {
      const job = wanted.find((j) => j.kind === 'loads/days');
      if (!job) throw new Error('no days');
      return (runJob(job, { blob: () => undefined, tell: () => {} }) as DesignDays).night.house;
    };
    expect(nightOf(ranged) / nightOf(base)).toBeCloseTo(1.2, 1.7);
  });

  it('is the old plan again after one step back', () => {
    const taken = withLoss(tern, { low: 1.1, likely: 1.2, high: 1.3 });
    const edit = { device: 'd', seq: 1, path: ['house', 'learned'], before: taken.house?.learned, after: undefined };
    const back = applyEdit(taken, edit);
    expect(back.problems).toEqual([]);
    expect(planned(back.value).plan).toEqual(base.plan);
  });
});

/** °C of each heated room, row by row, of a house left alone at 20 °C in still cold; rows of so many seconds. */
function cooling(project: Project, times: Share, rowSeconds: number): number[][] {
  const { house, site } = resolveProject(withLoss(project, times));
  const wave = waveOf(Array.from({ length: 12 }, () => -5));
  const inputs = houseInputs(house, site, 101_325, wave, scenario());
  const even = (x: number): number[] => new Array(24).fill(x);
  const day = {
    ...{ latitude: 53, pressure: 101_325, month: 0.5, firstDay: 15, humidityRatio: 0.002, wind: 4, cloud: 1 },
    ...{ outdoor: even(-5), dni: even(0), dhi: even(0) },
  };
  const steps = weatherSteps({ ...rowsOfDay(day, []), rowSeconds }, rowSeconds / 4);
  const layout = layOutHouse(inputs, { steps, monthOfRow: new Float64Array(24).fill(0.5) }, [], { occupied: 0 });
  const begun = startState(layout, { inside: 20, outside: -5, humidity: 0.002 });
  const { temperature } = runBuilding(layout, begun, steps, { warmUp: 0 });
  const zones = layout.zoneIds.length;
  const rooms = inputs.shell.rooms.map((r) => layout.zoneIds.indexOf(r.id));
  return Array.from({ length: 24 }, (_, h) => rooms.map((z) => temperature[h * zones + z] ?? Number.NaN));
}

describe('a house left alone that loses twice as much', () => {
  // C dT/dt = -K (T - T_out): with every K twice as large the same curve is gone through in half the time.
  it('cools through the same temperatures in half the time', () => {
    const simple: Project = {
      schema: 1,
      house: { floorArea: { value: 90, known: 'measured' }, era: '1966-1980', attic: 'none', below: 'slab' },
      site: tern.site ?? {},
    };
    const [once, twice] = [cooling(simple, 1, 7200), cooling(simple, 2, 3600)];
    expect((once[0]?.[0] ?? 0) - (once[23]?.[0] ?? 0)).toBeGreaterThan(5);
    for (const [h, row] of once.entries()) expect(row[0]).toBeCloseTo(twice[h]?.[0] ?? Number.NaN, 6);
  });

  it('does so room by room where inside walls hold heat as before, but for what they take to give it', () => {
    const [once, twice] = [cooling(tern, 1, 7200), cooling(tern, 2, 3600)];
    for (const [h, row] of once.entries())
      for (const [k, t] of row.entries()) expect(Math.abs(t - (twice[h]?.[k] ?? Number.NaN))).toBeLessThan(1);
  });
});
