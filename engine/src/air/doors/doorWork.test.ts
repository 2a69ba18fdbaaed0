import { applyEdit, type Project, valueAt } from '@kneewall/project';
import { describe, expect, it } from 'vitest';
import { demo } from '../../../test/demos.ts';
import { evaluate } from '../../index.ts';

const project = demo('tern-ledge');
const edited = (p: Project, path: readonly string[], after: unknown): Project =>
  applyEdit(p, { device: 'test', seq: 1, path, before: valueAt(p, path), after }).value;
const pressureOf = (p: Project, room: string): number => {
  const value = evaluate(p, {}).plan.findings.find((f) => f.id === `air/closed-door:${room}`)?.value;
  return typeof value === 'number' ? value : (value?.likely ?? Number.NaN);
};

describe('what to do about shut doors', () => {
  const { plan } = evaluate(project, {});
  const ways = plan.trades.air?.shut.ok ? plan.trades.air.shut.value.ways : [];

  it('names every room above the limit, and no other', () => {
    const above = plan.findings.filter((f) => f.id.startsWith('air/closed-door:') && f.status === 'fails');
    expect(ways.map((w) => `air/closed-door:${w.room}`).sort()).toEqual(above.map((f) => f.id).sort());
    expect(ways.length).toBeGreaterThan(0);
  });

  it('done as named, the room stands at 3 Pa', () => {
    const [way] = ways;
    if (!way) throw new Error('there is one');
    const measured = (value: number) => ({ value, known: 'measured' });
    const door = ['house', 'rooms', way.room, 'door'];
    const mended =
      way.by === 'gap'
        ? edited(project, [...door, 'gap'], measured(way.gap))
        : edited(project, [...door, 'transfer'], measured(0.7 * way.face));
    expect(pressureOf(mended, way.room)).toBeCloseTo(3, 3);
  });

  it('is bought or cut: a line for each grille, one task for all', () => {
    const grilles = plan.materials.filter((m) => m.id.startsWith('air/transfer:'));
    expect(grilles.length).toBe(ways.filter((w) => w.by === 'grille').length);
    const task = plan.tasks.find((t) => t.id === 'air/door-ways');
    for (const way of ways) expect(task?.what).toContain(way.name);
    expect(task?.cautions.join(' ')).toMatch(/fire/);
  });
});

describe('a plenum before its first take-off', () => {
  it('is judged where it was measured, and not told of where nobody did', () => {
    const of = (length?: number) => {
      const p =
        length === undefined
          ? project
          : edited(project, ['routes', 'ducts', 'handler', 'plenum'], { value: length, known: 'measured' });
      return evaluate(p, {}).plan.findings.find((f) => f.id === 'air/plenum')?.status;
    };
    expect([of(), of(0.3), of(0.6)]).toEqual([undefined, 'fails', 'ok']);
  });
});
