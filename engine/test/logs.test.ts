import { demos } from '@kneewall/demos';
import type { LogTable, Project } from '@kneewall/project';
import { beforeAll, describe, expect, it } from 'vitest';
import { learnFromLog } from '../src/commissioning/logs/learnFromLog.ts';
import type { LogAnswers } from '../src/commissioning/logs/result.ts';
import { weatherOfYear, yearTable } from '../src/coupling/houseYear/table.ts';
import { evaluate, houseYearKind, logFitKind, runJob, type WeatherYear, type YearInputs } from '../src/index.ts';
import { scaledLeaks } from '../src/loads/learned/scaled.ts';
import { fraction, type Seeded, seeded } from '../src/physics/schedule/seeded.ts';

/** A demo's house run through its year by the heat balance of all its walls: another model than the one that is fitted. */
type Ran = { readonly heat: Float64Array; readonly indoor: Float64Array };

async function houseOf(id: string) {
  const project = (await demos.find((d) => d.id === id)?.load()) as Project;
  const inputs = evaluate(project, {}).wanted.find((j) => j.kind === houseYearKind)?.inputs as YearInputs;
  const year = weatherOfYear(inputs.weather, () => {
    throw new Error('made from months');
  });
  const wanted = { ...inputs.house.wanted, cooling: 60 };
  const house = { ...inputs.house, wanted };
  const run = (weather: WeatherYear, times = 1): Ran => {
    const envelope = scaledLeaks(house.envelope, times);
    const changed = { ...house, ...(times === 1 ? {} : { times, envelope }) };
    const { loaded } = yearTable({ ...inputs, house: changed, step: 3600 }, weather, () => {});
    const { record, rooms, zones, rows } = loaded;
    const areas = house.shell.rooms.map((r) => r.floorArea);
    const all = areas.reduce((a, b) => a + b, 0);
    const at = rooms.map((r) => zones.indexOf(r));
    const sum = (h: number, of: (k: number) => number): number => rooms.reduce((a, _, k) => a + of(k), h * 0);
    return {
      heat: Float64Array.from({ length: rows }, (_, h) => sum(h, (k) => record.heating[h * rooms.length + k] ?? 0)),
      indoor: Float64Array.from({ length: rows }, (_, h) =>
        sum(h, (k) => ((areas[k] ?? 0) / all) * (record.temperature[h * zones.length + (at[k] ?? 0)] ?? 0)),
      ),
    };
  };
  const asked = { ...project, logs: { winter: { name: 'winter', blob: 'a'.repeat(64) } } };
  const job = evaluate(asked, {}).wanted.find((j) => j.kind === logFitKind);
  return { year, run, job };
}

const normal = (r: Seeded): number => Math.sqrt(-2 * Math.log(fraction(r))) * Math.cos(2 * Math.PI * fraction(r));

/** What meters would write down of those hours, with their scatter: 0.2 K, 0.1 K, 3 %. Power as a unit of COP 3.2 + 0.06/K draws it. */
function logOf(year: WeatherYear, ran: Ran, from: number, days: number, more: (h: number) => number): LogTable {
  const r = seeded(from + 1);
  const n = 24 * days;
  const at = (x: Float64Array, h: number): number => x[24 * from + h] ?? Number.NaN;
  const column = (of: (h: number) => number): Float64Array => Float64Array.from({ length: n }, (_, h) => of(h));
  return {
    kind: 'log',
    time: column((h) => 3600 * (24 * (20_454 + from) + h)),
    columns: {
      outdoor: column((h) => at(year.dryBulb, h) + 0.2 * normal(r)),
      indoor: column((h) => at(ran.indoor, h) + 0.1 * normal(r)),
      heat: column((h) => at(ran.heat, h) * (1 + 0.03 * normal(r))),
      unitPower: column((h) => (at(ran.heat, h) / (3.2 + 0.06 * at(year.dryBulb, h))) * more(h)),
      sun: column((h) => at(year.ghi, h)),
      wind: column((h) => at(year.windSpeed, h)),
    },
    spans: [],
    step: 3600,
    rows: n,
    faults: {},
    asks: [],
  };
}

describe.each(['tern-ledge', 'juniper-flat'])('a log of %s as its heat balance runs it', (id) => {
  let house: Awaited<ReturnType<typeof houseOf>>;
  let ran: Ran;
  let colder: Ran;
  beforeAll(async () => {
    house = await houseOf(id);
    const { year, run } = house;
    ran = run(year);
    const by3 = (x: Float64Array): Float64Array => x.map((t) => t - 3);
    colder = run({ ...year, dryBulb: by3(year.dryBulb), dewPoint: by3(year.dewPoint) });
  });
  const mean = (x: Float64Array, from: number, days: number): number =>
    x.subarray(24 * from, 24 * (from + days)).reduce((a, b) => a + b, 0) / (24 * days);
  const learn = (table: LogTable) => learnFromLog(table, { density: 1 }, () => {});

  it('gives the loss that three degrees colder outdoors cost, within 12 % and inside its range', () => {
    for (const [from, days] of [
      [0, 42],
      [20, 42],
      [0, 90],
    ] as const) {
      const truth = (mean(colder.heat, from, days) - mean(ran.heat, from, days)) / 3;
      const { house: told } = learn(logOf(house.year, ran, from, days, () => 1));
      if ('weak' in told) throw new Error(told.weak);
      const { low, likely, high } = told.lossPerDegree;
      expect(Math.abs(likely / truth - 1)).toBeLessThan(0.12);
      expect(low).toBeLessThan(truth);
      expect(high).toBeGreaterThan(truth);
    }
  });

  it('says how many times the plan’s own loss it is, where everything lets that much more or less through', () => {
    const times = id === 'tern-ledge' ? 1.25 : 0.85;
    const { year, run, job } = house;
    if (!job) throw new Error('no job');
    const table = logOf(year, run(year, times), 0, 60, () => 1);
    const { house: told } = runJob(job, { blob: () => table, tell: () => {} }) as LogAnswers;
    if ('weak' in told || !told.times) throw new Error('nothing told');
    const { low, likely, high } = told.times;
    // What is inside and what the sun brings stays: a house is told apart from its plan better than its loss is known.
    expect(Math.abs(likely / times - 1)).toBeLessThan(0.04);
    expect(low).toBeLessThan(times);
    expect(high).toBeGreaterThan(times);
  });

  it('finds from when the unit draws 8 % more for the same heat, and nothing where nothing changed', () => {
    const { change } = learn(logOf(house.year, ran, 0, 70, (h) => (h >= 24 * 45 ? 1.08 : 1)));
    expect(change?.chance).toBeLessThanOrEqual(0.05);
    expect(Math.abs((change?.day ?? 0) - 20_454 - 45)).toBeLessThanOrEqual(2);
    expect(change?.low).toBeLessThan(0.08);
    expect(change?.high).toBeGreaterThan(0.08);
    // What is no change may by chance be called one in one log of twenty; then it is next to nothing.
    const none = learn(logOf(house.year, ran, 0, 70, () => 1)).change;
    expect((none?.chance ?? 0) > 0.05 || Math.abs(none?.share ?? 1) < 0.02).toBe(true);
  });

  it('refuses three warm weeks, a week of winter, and a log without heat', () => {
    const whole = logOf(house.year, ran, 180, 21, () => 1);
    expect(learn(whole).house).toHaveProperty('weak');
    expect(learn(logOf(house.year, ran, 0, 7, () => 1)).house).toEqual({ weak: 'few-days' });
    const { heat: _, unitPower: __, ...others } = whole.columns;
    expect(learn({ ...whole, columns: others }).house).toEqual({ weak: 'no-columns' });
  });
});
