import { applyEdit, type Project, valueAt } from '@kneewall/project';
import { describe, expect, it } from 'vitest';
import { demo } from '../../../test/demos.ts';
import { evaluate } from '../../index.ts';

const edited = (project: Project, path: readonly string[], after: unknown): Project =>
  applyEdit(project, { device: 'test', seq: 1, path, before: valueAt(project, path), after }).value;
const measured = (value: number) => ({ value, known: 'measured' as const });
const project = demo('tern-ledge');
const room = ['house', 'rooms', 'bed-south', 'door'];
const findingsOf = (p: Project) => new Map(evaluate(p, {}).plan.findings.map((f) => [f.id, f]));
const likely = (p: Project, id: string): number => {
  const value = findingsOf(p).get(id)?.value;
  return typeof value === 'number' ? value : (value?.likely ?? Number.NaN);
};

describe('shut doors', () => {
  it('the gap that is asked for brings the room to the limit', () => {
    const { air } = evaluate(project, {}).plan.trades;
    const { enough = 0 } = (air?.shut.ok ? air.shut.value.blower.rooms['bed-south'] : undefined) ?? {};
    const wide = edited(project, [...room, 'gap'], measured(enough / 0.762));
    expect(likely(wide, 'air/closed-door:bed-south')).toBeCloseTo(3, 3);
  });

  it('two grilles with a duct between let through less than one, and either more than none', () => {
    const none = likely(project, 'air/closed-door:bed-south');
    const beside = (faces: 'one' | 'two') =>
      likely(
        edited(edited(project, [...room, 'transfer'], measured(0.02)), [...room, 'faces'], faces),
        'air/closed-door:bed-south',
      );
    expect(beside('two')).toBeLessThan(none);
    expect(beside('one')).toBeLessThan(beside('two'));
  });

  it('a door that is always open has nothing to answer for, and eases the house', () => {
    const open = edited(project, [...room, 'shut'], 'open');
    expect(findingsOf(open).has('air/closed-door:bed-south')).toBe(false);
    expect(likely(open, 'air/house-pressure')).toBeGreaterThan(likely(project, 'air/house-pressure'));
  });

  it('exhaust fans draw the house further down, and are named; doors are judged without them', () => {
    const hood = { name: 'Hood', room: 'sitting', flow: measured(0.1) };
    const drawn = edited(project, ['house', 'exhaust', 'hood'], hood);
    expect(likely(drawn, 'air/house-pressure')).toBeLessThan(likely(project, 'air/house-pressure') - 1);
    expect(likely(drawn, 'air/closed-door:work')).toBe(likely(project, 'air/closed-door:work'));
    const finding = findingsOf(drawn).get('air/house-pressure');
    expect(finding?.what).toMatch(/of exhaust/);
    expect(finding?.caution).toMatch(/^Fans that are not entered and a gale come/);
  });

  it('a return that takes in more than the supply loses does not hide what exhaust fans do with the blower off', () => {
    const sections = Object.keys(project.routes?.ducts?.sections ?? {}).filter((id) => id.startsWith('return'));
    const leaky = sections.reduce(
      (p, id) => edited(p, ['routes', 'ducts', 'sections', id, 'leakage'], measured(0.3)),
      edited(project, ['house', 'exhaust', 'hood'], { name: 'Hood', flow: measured(0.05) }),
    );
    const { air } = evaluate(leaky, {}).plan.trades;
    const cases = air?.shut.ok ? air.shut.value.flue : [];
    const [worst] = cases;
    const same = cases.find((c) => c.weather === worst?.weather && c.blows);
    expect(worst?.blows).toBe(false);
    expect(worst?.meets).toBeLessThan(same?.meets ?? Number.NaN);
    const finding = findingsOf(leaky).get('air/house-pressure');
    expect(finding?.what).toMatch(/blower off, which is worse here/);
    expect(likely(leaky, 'air/house-pressure')).toBe(worst?.meets);
  });

  it('a flue up an outside wall has the pull of the warm house to overcome', () => {
    const outside = edited(project, ['house', 'flueRuns'], 'outside');
    expect(likely(outside, 'air/house-pressure')).toBeLessThan(likely(project, 'air/house-pressure') - 0.5);
    expect(findingsOf(outside).get('air/house-pressure')?.what).toMatch(/that flue starts cold/);
  });

  it('a flue is warned of where nothing can be computed', () => {
    const blind = edited(project, ['routes', 'ducts'], {});
    expect(findingsOf(blind).get('air/house-pressure')).toMatchObject({ status: 'unknown', consequence: 'harm' });
    expect(findingsOf(blind).get('air/house-pressure')?.caution).toMatch(/carbon monoxide alarm/);
  });

  it('a house without an open flue is not told of one; with one the caution always stands', () => {
    expect(findingsOf(edited(project, ['house', 'flue'], false)).has('air/house-pressure')).toBe(false);
    const finding = findingsOf(edited(project, ['house', 'flueOf'], 'furnace')).get('air/house-pressure');
    expect(finding).toMatchObject({ consequence: 'harm', limit: { min: -5 } });
    expect(finding?.caution).toMatch(/carbon monoxide alarm/);
  });
});
