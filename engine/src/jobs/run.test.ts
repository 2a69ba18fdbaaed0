import type { Project } from '@kneewall/project';
import { describe, expect, it } from 'vitest';
import { evaluate, JobRefused, makeJob, runJob, type WeatherYear } from '../index.ts';

const blob = 'a'.repeat(64);
const is = (value: number) => ({ value, known: 'measured' as const });
const project: Project = {
  schema: 1,
  site: { latitude: is(45), elevation: is(0), weather: { blob, format: 'hourly' } },
};
const fill = (f: (i: number) => number): Float64Array => Float64Array.from({ length: 8760 }, (_, i) => f(i));
/** A year made by arithmetic: coldest in January, a sun of sorts by day. */
const year: WeatherYear = {
  kind: 'weather-year',
  name: 'made up',
  format: 'hourly',
  stepSeconds: 3600,
  latitude: 45,
  longitude: 0,
  elevation: 0,
  timeZone: 0,
  sunOffset: 1800,
  dryBulb: fill((i) => 8 - 14 * Math.cos((2 * Math.PI * i) / 8760)),
  dewPoint: fill(() => 2),
  relativeHumidity: fill(() => 0.6),
  pressure: fill(() => 101_325),
  windSpeed: fill(() => 3),
  windDirection: fill(() => 0),
  ghi: fill((i) => Math.max(0, 400 * Math.sin(((i % 24) - 6) * (Math.PI / 12)))),
  dni: fill(() => 0),
  dhi: fill(() => 0),
};

describe('a plan that wants to know more', () => {
  it('says so, and uses the answer once it is there', () => {
    const first = evaluate(project, {});
    expect(first.wanted.map((j) => j.kind)).toEqual(['climate/year']);
    expect(first.plan.findings.find((f) => f.id === 'climate/cold-night-doubt')).toMatchObject({
      status: 'unknown',
      because: 'pending',
    });
    const [job] = first.wanted;
    if (!job) throw new Error('the year is wanted');
    const told: number[] = [];
    const result = runJob(job, { blob: (hash) => (hash === blob ? year : undefined), tell: (done) => told.push(done) });
    expect(told).toEqual([1, 2, 3]);
    const second = evaluate(project, { [job.key]: result });
    expect(second.wanted).toEqual([]);
    expect(second.plan.trades.climate?.night.ok).toBe(true);
    // The same plan as from the file itself.
    expect(evaluate(project, { [`blob:${blob}`]: year }).plan.trades.climate?.months).toEqual(
      second.plan.trades.climate?.months,
    );
  });

  it('is another job where the same file is to be read with other columns', () => {
    const key = (name: string) =>
      evaluate(
        { ...project, site: { ...project.site, weather: { blob, format: 'hourly', columns: { dryBulb: { name } } } } },
        {},
      ).wanted[0]?.key;
    expect(key('Temp')).toBe(key('Temp'));
    expect(key('Temp')).not.toBe(key('Air'));
  });

  it('refuses, in words, a file that is not at hand and a kind it does not know', () => {
    const host = { blob: () => undefined, tell: () => {} };
    const [job] = evaluate(project, {}).wanted;
    if (!job) throw new Error('the year is wanted');
    expect(() => runJob(job, host)).toThrow(JobRefused);
    expect(() => runJob(makeJob('climate/moon', 1, {}, 'short'), host)).toThrow(JobRefused);
    expect(() => runJob({ ...job, version: 99 }, host)).toThrow(JobRefused);
  });
});
