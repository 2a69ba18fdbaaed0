import { applyEdit, type Project, valueAt } from '@kneewall/project';
import { describe, expect, it } from 'vitest';
import { demo } from '../../../test/demos.ts';
import { evaluate } from '../../index.ts';

const edited = (project: Project, path: readonly string[], after: unknown): Project =>
  applyEdit(project, { device: 'test', seq: 1, path, before: valueAt(project, path), after }).value;
const measured = (value: number) => ({ value, known: 'measured' as const });
const project = demo('tern-ledge');
const register = ['routes', 'ducts', 'terminals', 'reg-bed-south'];
const findingOf = (p: Project, id: string) => evaluate(p, {}).plan.findings.find((f) => f.id === id);
const likely = (p: Project, id: string): number => {
  const value = findingOf(p, id)?.value;
  return typeof value === 'number' ? value : (value?.likely ?? Number.NaN);
};

describe('registers', () => {
  it('fanned out throw less far than straight', () => {
    const fanned = edited(project, [...register, 'blows'], 'fanned');
    expect(likely(fanned, 'air/throw:reg-bed-south')).toBeLessThan(likely(project, 'air/throw:reg-bed-south'));
  });

  it('with more open face are heard less', () => {
    const wider = edited(project, [...register, 'width'], measured(0.4));
    expect(likely(wider, 'air/room-sound:bed-south')).toBeLessThan(likely(project, 'air/room-sound:bed-south'));
  });

  it('at twice the flow their sheet states are 18 louder than it says, and a small room adds its own', () => {
    const sound = [...register, 'sound'];
    const sheet = (nc: number) =>
      edited(edited(project, sound, { value: nc, known: 'nameplate' }), [...register, 'pressureFlow'], measured(0.025));
    expect(likely(sheet(25), 'air/room-sound:bed-south') - likely(sheet(15), 'air/room-sound:bed-south')).toBeCloseTo(
      10,
      9,
    );
    expect(likely(sheet(15), 'air/room-sound:bed-south')).toBeGreaterThan(25);
  });

  it('low ones are not asked how deep their warm air comes', () => {
    const terminals = Object.keys(project.routes?.ducts?.terminals ?? {}).filter((id) => id.startsWith('reg-'));
    const low = terminals.reduce((p, id) => edited(p, ['routes', 'ducts', 'terminals', id, 'place'], 'floor'), project);
    expect(findingOf(project, 'air/warm-reach')?.status).toBe('fails');
    expect(findingOf(low, 'air/warm-reach')).toBeUndefined();
  });
});
