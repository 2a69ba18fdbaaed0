import { demos } from '@kneewall/demos';
import type { Project } from '@kneewall/project';
import { beforeAll, describe, expect, it } from 'vitest';
import { kilometresApart, readRecorded } from '../../climate/weather/recordedYear.ts';
import type { WeatherYear } from '../../climate/weather/weatherYear.ts';
import { winterMaker } from '../../climate/winters/winterYear.ts';
import { evaluate, type Job, runJob, splitOf } from '../../index.ts';
import { daysInMonth, monthStart } from '../../physics/calendar.ts';
import type { Recorded } from './recordedRows.ts';
import { type Winter, winterRows } from './winterRows.ts';
import type { WintersInputs } from './wintersJob.ts';

const sha = (n: number): string => String(n).repeat(64);
let tern: Project;
let made: WintersInputs;
let years: readonly WeatherYear[];
let job: Job;
let project: Project;

const blob = (hash: string): WeatherYear | undefined => years.find((_, n) => sha(n) === hash);
const wanted = (of: Project, kind: string): Job | undefined => evaluate(of, {}).wanted.find((j) => j.kind === kind);

/** A year of hours as a file of the kind that states its place in its first lines. */
function fileOf(year: WeatherYear, place: { latitude: number; longitude: number }): string[] {
  const head = `Source,Location ID,Latitude,Longitude,Time Zone,Elevation,Local Time Zone
x,1,${place.latitude},${place.longitude},${year.timeZone},${year.elevation},${year.timeZone}
Year,Month,Day,Hour,Minute,GHI,DNI,DHI,Temperature,Dew Point,Relative Humidity,Pressure,Wind Direction,Wind Speed`;
  const rows = daysInMonth.flatMap((length, month) =>
    Array.from({ length }, (_, d) =>
      Array.from({ length: 24 }, (_x, hour) => {
        const i = ((monthStart[month] ?? 0) + d) * 24 + hour;
        const at = (x: Float64Array): string => (x[i] ?? 0).toFixed(2);
        const humidity = (100 * (year.relativeHumidity[i] ?? 0)).toFixed(1);
        const pressure = ((year.pressure[i] ?? 0) / 100).toFixed(1);
        return `2009,${month + 1},${d + 1},${hour},30,${at(year.ghi)},${at(year.dni)},${at(year.dhi)},${at(year.dryBulb)},${at(year.dewPoint)},${humidity},${pressure},${at(year.windDirection)},${at(year.windSpeed)}`;
      }),
    ),
  );
  return [...head.split('\n'), ...rows.flat()];
}

beforeAll(async () => {
  tern = (await demos.find((d) => d.id === 'tern-ledge')?.load()) as Project;
  made = wanted(tern, 'coupling/winters')?.inputs as WintersInputs;
  const maker = winterMaker(made.winters);
  years = [maker.year(0), maker.year(1)];
  const entry = (n: number) => ({ blob: sha(n), name: `year ${n}.csv`, format: 'psm3' as const });
  project = { ...tern, site: { ...tern.site, recorded: { b: entry(1), a: entry(0) } } };
  job = wanted(project, 'coupling/recorded-winters') as Job;
});

describe('recorded winters', () => {
  it('are not asked for without files, and are a job of one piece a file', () => {
    expect(wanted(tern, 'coupling/recorded-winters')).toBeUndefined();
    expect(evaluate(tern, {}).plan.findings.filter((f) => f.id.startsWith('offgrid/recorded'))).toEqual([]);
    expect(job.cost).toBe('long');
    expect(splitOf(job)?.count).toBe(2);
    expect(() => runJob(job, { blob: () => undefined, tell: () => {} })).toThrow(/not at hand/);
  });

  it('come to what the same winters made do, and read in so many of so many', () => {
    const found = runJob(job, { blob, tell: () => {} }) as Recorded;
    const like = winterRows(made, 0, 2, () => {});
    expect(found.winters.map((w) => w.name)).toEqual(['year 0.csv', 'year 1.csv']);
    for (const [n, row] of like.entries()) {
      const { id: _id, name: _name, ...numbers } = found.winters[n] as Recorded['winters'][number];
      expect(Object.values(numbers satisfies Winter)).toEqual(row.slice(0, Object.keys(numbers).length));
    }
    const findings = evaluate(project, { [job.key]: found }).plan.findings;
    const [heat, alone] = ['heat', 'alone'].map((id) => findings.find((f) => f.id === `offgrid/recorded-${id}`));
    expect(heat?.what).toMatch(/of 2 recorded winters/);
    expect(heat?.limit).toEqual({ max: 0 });
    expect(heat?.status).toBe(found.winters.some((w) => w.cold > 24) ? 'fails' : 'ok');
    for (const f of [heat, alone]) expect(`${f?.what} ${f?.why} ${f?.mend}`).not.toMatch(/NaN|undefined|Infinity/);
  });
});

describe('the file of a recorded year', () => {
  const is = (value: number) => ({ value, known: 'measured' as const });
  const place = { latitude: 44, longitude: -68 };
  const site = { latitude: is(44), longitude: is(-68) };
  const entry = { name: 'mine.csv', format: 'psm3' as const };
  const read = (lines: readonly string[], at = site) => readRecorded(lines.join('\n'), entry, at);
  const year = (): WeatherYear => years[0] as WeatherYear;

  it('is taken where it is whole and near', () => {
    const { value, problems } = read(fileOf(year(), place));
    expect(problems.filter((p) => p.grade === 'refused')).toEqual([]);
    expect(value?.dryBulb.length).toBe(8760);
    expect(value?.dryBulb[100]).toBeCloseTo(year().dryBulb[100] ?? 0, 1);
  });

  it('is refused with too few hours and with a gap, and says where', () => {
    const lines = fileOf(year(), place);
    for (const some of [lines.slice(0, 4000), [...lines.slice(0, 2000), ...lines.slice(2048)]]) {
      const { value, problems } = read(some);
      expect(value).toBeUndefined();
      expect(problems[0]).toMatchObject({ grade: 'refused', code: 'missing-hours' });
      expect(problems[0]?.path[0]).toBe('mine.csv');
      expect(problems[0]?.path.length).toBeGreaterThan(1);
    }
  });

  it('is asked about from a station further off, and refused from another place', () => {
    // A degree of latitude is 111.2 km on a sphere of 6371 km: its girth by 360.
    expect(kilometresApart([44, -68], [45, -68])).toBeCloseTo((2 * Math.PI * 6371) / 360, 6);
    const away = (degrees: number) => read(fileOf(year(), { ...place, latitude: 44 + degrees }));
    const [near, far] = [away(1), away(5)];
    expect(near.value).toBeDefined();
    expect(near.problems.find((p) => p.code === 'other-place')).toMatchObject({
      grade: 'ask',
      found: '111 km from the house',
    });
    expect(far.value).toBeUndefined();
    expect(far.problems.find((p) => p.code === 'other-place')).toMatchObject({
      grade: 'refused',
      path: ['mine.csv', 'line', 1],
    });
  });
});
