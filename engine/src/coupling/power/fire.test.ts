import { demos } from '@kneewall/demos';
import type { Project } from '@kneewall/project';
import { beforeAll, describe, expect, it } from 'vitest';
import { evaluate } from '../../index.ts';
import { weatherOfYear } from '../houseYear/table.ts';
import { heldBack } from './powerAnswers.ts';
import { powerRuns } from './powerRun.ts';
import type { PowerYearInputs } from './powerYearJob.ts';
import type { PowerRun } from './runWay.ts';

const none = (): never => {
  throw new Error('no file');
};
const loadProject = async (id: string): Promise<Project> => (await demos.find((d) => d.id === id)?.load()) as Project;
const inputsOf = (project: Project, kind: string): PowerYearInputs =>
  ({ ...(evaluate(project, {}).wanted.find((j) => j.kind === kind)?.inputs as object), step: 3600 }) as PowerYearInputs;
let tern: PowerYearInputs;
let juniper: PowerYearInputs;

/** A year without a generator, heated by a stove where power does not do. */
function burning(inputs: PowerYearInputs, heat: number, lightBelow = 1): PowerRun {
  const { generator: _none, ...power } = inputs.power;
  const changed = { ...inputs, power: { ...power, stove: { heat, lightBelow } } };
  return powerRuns(changed, weatherOfYear(changed.weather, none)).run('without-generator', () => {});
}

/** Hours in which the unit cools while a fire burns, or within a day of one. */
function coolsAgainst({ record, hours }: PowerRun): number {
  let [count, since] = [0, Number.POSITIVE_INFINITY];
  for (let i = 0; i < record.unit.length; i++) {
    since = (record.stove[i] ?? 0) > 0 ? 0 : since + hours;
    if (since < 24 && (record.heat[i] ?? 0) === 0 && (record.unit[i] ?? 0) > 0) count += hours;
  }
  return count;
}

/** K by which a fire brings its room above what is wanted, at most. */
const overBy = ({ record }: PowerRun): number =>
  record.stove.reduce((most, w, i) => (w > 0 ? Math.max(most, -(record.cold[i] ?? 0)) : most), 0);

beforeAll(async () => {
  tern = inputsOf(await loadProject('tern-ledge'), 'coupling/power-year');
  juniper = inputsOf(await loadProject('juniper-flat'), 'coupling/grid-year');
});

describe('a fire where power does not do', () => {
  it.each([
    ['a small stove at Tern Ledge', () => tern, 3000],
    ['a large stove at Tern Ledge', () => tern, 9000],
    ['a small stove at Juniper Flat', () => juniper, 3000],
    ['a large stove at Juniper Flat', () => juniper, 9000],
  ] as const)(
    'is never cooled against, and burns as its room asks: %s',
    (_name, inputs, heat) => {
      const run = burning(inputs(), heat);
      expect(heldBack(run, run).burning).toBeGreaterThan(100);
      expect(coolsAgainst(run)).toBe(0);
      expect(overBy(run)).toBeLessThanOrEqual(1e-6);
      for (const w of run.record.stove) expect(w).toBeLessThanOrEqual(heat + 1e-9);
      expect(run.record.residual[0]).toBeLessThanOrEqual(1e-9);
    },
    60_000,
  );

  it('is lit when the room is so much too cold, and goes out once the unit carries the room', () => {
    const { record } = burning(tern, 9000, 2);
    for (let i = 1; i < record.stove.length; i++) {
      const lit = (record.stove[i] ?? 0) > 0 && record.stove[i - 1] === 0;
      if (lit) expect(record.cold[i - 1]).toBeGreaterThan(2);
    }
  });
});
