import { demos } from '@kneewall/demos';
import { type Project, resolveProject } from '@kneewall/project';
import { beforeAll, describe, expect, it } from 'vitest';
import type { HouseYear } from '../../coupling/houseYear/answers.ts';
import type { Improvement, Improvements } from '../../coupling/houseYear/improvements.ts';
import { evaluate, JobRefused, runJob } from '../../index.ts';
import { scenario } from '../../plan/scenario.ts';
import { assemblyU, settingOf } from '../assembly.ts';
import { bothFilms, filmsIn, resistanceOf } from '../constructions/index.ts';
import type { DesignDays } from './daysJob.ts';
import { groundBelow, waveOf } from './ground.ts';
import { houseInputs } from './houseInputs.ts';
import { type StudyInputs, studyAnswers, studyRows } from './study.ts';

const host = { blob: () => undefined, tell: () => {} };
const load = async (id: string): Promise<Project> => {
  const demo = demos.find((d) => d.id === id);
  if (!demo) throw new Error(`there is no demo ${id}`);
  return (await demo.load()) as Project;
};
const is = (value: number) => ({ value, known: 'measured' as const });
const jobOf = (project: Project, kind: string) => {
  const job = evaluate(project, {}).wanted.find((j) => j.kind === kind);
  if (!job) throw new Error(`${kind} is not wanted`);
  return job;
};
const daysOf = (project: Project) => runJob(jobOf(project, 'loads/days'), host) as DesignDays;
/** Hours instead of quarters are enough to see which way a year moves. */
const yearOf = (project: Project) => {
  const { key, kind, version, cost, inputs } = jobOf(project, 'loads/year');
  return runJob({ key, kind, version, cost, inputs: { ...(inputs as object), step: 3600 } }, host) as HouseYear;
};

let tern: Project;
let juniper: Project;
beforeAll(async () => {
  tern = await load('tern-ledge');
  juniper = await load('juniper-flat');
});

describe('a house read for the heat balance', () => {
  it.each(['tern-ledge', 'juniper-flat'])('keeps the U of every surface of %s as the steady sums have it', (id) => {
    const { house, site } = resolveProject(id === 'tern-ledge' ? tern : juniper);
    const s = scenario();
    const wave = waveOf(Array.from({ length: 12 }, (_, i) => i));
    const { shell } = houseInputs(house, site, 101_325, wave, s);
    for (const x of shell.surfaces) {
      const surface = house.surfaces[x.id];
      const assembly = house.assemblies[surface?.assembly ?? ''];
      if (!assembly) throw new Error(x.id);
      const setting = settingOf(s.choice(surface?.kind ?? { path: '', missing: true }), x.behind);
      const u = assemblyU(assembly, setting, s);
      expect(1 / (resistanceOf(x.layers) + bothFilms(filmsIn(setting)))).toBeCloseTo(u, 9);
    }
  });

  it('finds the wave of a year of months', () => {
    const months = Array.from({ length: 12 }, (_, i) => 10 - 8 * Math.cos((2 * Math.PI * (i + 0.5 - 1.2)) / 12));
    const wave = waveOf(months);
    expect(wave.mean).toBeCloseTo(10, 9);
    expect(wave.amplitude).toBeCloseTo(8, 9);
    expect(wave.coldest).toBeCloseTo(1.2, 9);
  });

  // ISO 13370: the ground's year is weaker than the air's and late.
  it('has ground that follows the year weakly and a month late', () => {
    const wave = { mean: 8, amplitude: 10, coldest: 0.5 };
    const { temperature } = groundBelow(95, 40, 0, wave);
    const year = Array.from({ length: 120 }, (_, i) => temperature(i / 10));
    expect(Math.min(...year)).toBeGreaterThan(wave.mean - wave.amplitude);
    expect(Math.max(...year) - Math.min(...year)).toBeLessThan(2 * wave.amplitude);
    expect(year.indexOf(Math.min(...year)) / 10).toBeCloseTo(1.5, 1);
  });
});

describe('the design days', () => {
  it('take about what the steady sums say: less where ground and walls help, never half of it', () => {
    for (const project of [tern, juniper]) {
      const { plan } = evaluate(project, {});
      const steady = plan.trades.loads?.heating;
      if (!steady?.ok) throw new Error('no steady load');
      const { night, recovery } = daysOf(project);
      expect(night.house / steady.value.likely).toBeGreaterThan(0.7);
      expect(night.house / steady.value.likely).toBeLessThan(1.1);
      // A lowered night has to be made up in the morning.
      expect(recovery.night.house).toBeGreaterThan(night.house);
    }
  });

  it('name what makes the hot hour, and the parts are the hour', () => {
    const { day, parts } = daysOf(juniper);
    const hourly = parts.reduce((a, p) => a + p.heat, 0);
    expect(hourly / (day.sensible[day.worst] ?? 0)).toBeCloseTo(1, 1);
    expect(parts.find((p) => p.driver === 'window-sun')?.heat).toBeGreaterThan(0);
    const rooms = Object.values(day.rooms).reduce((a, r) => a + r.atWorst, 0);
    expect(rooms).toBeCloseTo(day.sensible[day.worst] ?? 0, 6);
  });
});

describe('a year in a house', () => {
  it('takes less heat with more in the ceiling, and less again with fewer leaks', () => {
    const before = yearOf(tern).heating.energy;
    const sealed: Project = { ...tern, house: { ...tern.house, draught: 'tight' } };
    expect(yearOf(sealed).heating.energy).toBeLessThan(before);
    const assemblies = { ...tern.house?.assemblies, 'old-ceiling': { common: 'ceiling-r49' as const } };
    expect(yearOf({ ...tern, house: { ...tern.house, assemblies } }).heating.energy).toBeLessThan(before);
  });

  it('takes more heat and less cooling behind a hill to the south, and with windows set deep', () => {
    const before = yearOf(juniper);
    const horizon = {
      a: { azimuth: is(90), height: is(0) },
      b: { azimuth: is(180), height: is(35) },
      c: { azimuth: is(270), height: is(0) },
    };
    const behind = yearOf({ ...juniper, site: { ...juniper.site, horizon } });
    expect(behind.heating.energy).toBeGreaterThan(before.heating.energy);
    const openings = Object.fromEntries(
      Object.entries(juniper.house?.openings ?? {}).map(([id, o]) => [id, { ...o, recess: is(0.3) }]),
    );
    const deep = yearOf({ ...juniper, house: { ...juniper.house, openings } });
    expect(deep.cooling.sensible).toBeLessThan(before.cooling.sensible);
  });

  it('turns round south of the equator', () => {
    const house = { floorArea: is(100), era: '1966-1980' as const };
    const site = { elevation: is(0), coldNight: is(0), hotAfternoon: is(32), longitude: is(0) };
    const north = yearOf({ schema: 1, site: { ...site, latitude: is(38) }, house });
    const south = yearOf({ schema: 1, site: { ...site, latitude: is(-38) }, house });
    const coldest = (months: readonly number[]) => months.indexOf(Math.max(...months));
    expect([11, 0, 1]).toContain(coldest(north.heating.months));
    expect([5, 6, 7]).toContain(coldest(south.heating.months));
    expect(south.heating.energy / north.heating.energy).toBeGreaterThan(0.8);
    expect(south.heating.energy / north.heating.energy).toBeLessThan(1.25);
  });

  it('lives through a polar night without a number that is none', () => {
    const site = { latitude: is(74), longitude: is(0), elevation: is(0), coldNight: is(-35), hotAfternoon: is(12) };
    const year = yearOf({ schema: 1, site, house: { floorArea: is(80) } });
    const numbers = JSON.stringify(year, (_, x: unknown) =>
      typeof x === 'number' && !Number.isFinite(x) ? 'none' : x,
    );
    expect(numbers).not.toContain('none');
    expect(year.heating.energy).toBeGreaterThan(5000);
  });

  it('is not run with a window larger than its wall, and says which wall', () => {
    const openings = { big: { surface: 'sitting-wall-west', glazing: 'single' as const, width: is(6), height: is(4) } };
    const { plan, wanted } = evaluate({ ...tern, house: { ...tern.house, openings } }, {});
    expect(wanted.some((j) => j.kind === 'loads/year')).toBe(false);
    expect(plan.trades.loads?.year).toEqual({
      ok: false,
      because: 'out-of-range',
      paths: ['house.surfaces.sitting-wall-west.area'],
    });
  });

  it('is refused in words where the house cannot stand', () => {
    const job = jobOf(tern, 'loads/year');
    const inputs = job.inputs as { house: { shell: { surfaces: { layers: unknown[] }[] } } };
    const broken = structuredClone(inputs);
    const [first] = broken.house.shell.surfaces;
    if (first) first.layers = [{ resistance: -1 }];
    expect(() => runJob({ ...job, inputs: broken }, host)).toThrow(JobRefused);
  });
});

describe('a study of many houses', () => {
  it('gives the same rows however the samples are split, and ranks what really moves the load', () => {
    const job = jobOf(juniper, 'loads/study');
    const inputs = { ...(job.inputs as StudyInputs), samples: 96 };
    const whole = studyRows(inputs, 0, 96, () => {});
    expect([...studyRows(inputs, 0, 40, () => {}), ...studyRows(inputs, 40, 96, () => {})]).toEqual(whole);
    const study = studyAnswers(inputs, whole);
    expect(study.heating.p10).toBeLessThan(study.heating.p50);
    expect(study.heating.p50).toBeLessThan(study.heating.p90);
    const rooms = Object.values(study.rooms).reduce((a, r) => a + r.heating.p50, 0);
    expect(rooms / study.heating.p50).toBeCloseTo(1, 1);
    const byHeating = [...study.unknowns].sort((a, b) => b.heating - a.heating).slice(0, 3);
    expect(byHeating.map((u) => u.path)).toContain('house.draught');
  });

  it('asks for the totals of what it ranked first once it is done, and no longer for itself', () => {
    const job = jobOf(juniper, 'loads/study');
    const inputs = { ...(job.inputs as StudyInputs), samples: 32 };
    const study = studyAnswers(
      inputs,
      studyRows(inputs, 0, 32, () => {}),
    );
    const { plan, wanted } = evaluate(juniper, { [job.key]: study });
    expect(plan.trades.loads?.study).toEqual({ ok: true, value: study });
    expect(wanted.map((j) => j.kind)).toContain('loads/totals');
    expect(wanted.map((j) => j.kind)).not.toContain('loads/study');
  });
});

describe('what would help', () => {
  const found = () => runJob(jobOf(juniper, 'coupling/improvements'), host) as Improvements;

  it('is worked out together, and nothing cheaper takes off more than what is listed', () => {
    const { single, together } = found();
    expect(single.length).toBeGreaterThan(2);
    for (const x of single) expect(x.cost.low).toBeLessThan(x.cost.high);
    together.forEach((x, i) => {
      const before = together[i - 1];
      if (!before) return;
      expect(x.cost.likely).toBeGreaterThanOrEqual(before.cost.likely);
      expect(x.heating).toBeGreaterThan(before.heating);
    });
    // Ways out for the same heat: together they take off no more than each alone added up, and nearly as much.
    const alone = (x: Improvement): number =>
      x.measures.reduce((a, m) => a + (single.find((y) => y.measures[0] === m)?.heating ?? 0), 0);
    const several = together.filter((x) => x.measures.length > 1);
    expect(several.length).toBeGreaterThan(2);
    for (const x of several) {
      expect(x.heating / alone(x)).toBeGreaterThan(0.9);
      expect(x.heating / alone(x)).toBeLessThan(1.05);
    }
  });
});
