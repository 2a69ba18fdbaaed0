import { applyEdit, type Project, valueAt } from '@kneewall/project';
import { describe, expect, it } from 'vitest';
import { demo } from '../../../test/demos.ts';
import { evaluate } from '../../index.ts';
import { throwConstants, throwTo } from '../../physics/jet/index.ts';

const edited = (project: Project, path: readonly string[], after: unknown): Project =>
  applyEdit(project, { device: 'test', seq: 1, path, before: valueAt(project, path), after }).value;
const measured = (value: number) => ({ value, known: 'measured' as const });
/** The south bedroom, 12.5 m² and 2.4 m high, its register in the ceiling blowing one way to a wall 3.2 m off. */
const bedAt = (distance: number | undefined, more: object = {}): Project =>
  edited(demo('tern-ledge'), ['house', 'rooms', 'bed-south', 'rest'], {
    a: { kind: 'bed', ...(distance === undefined ? {} : { distance: measured(distance) }), ...more },
  });
const findingOf = (p: Project) => evaluate(p, {}).plan.findings.find((f) => f.id === 'air/draught:bed-south');
const speed = (p: Project): number => {
  const value = findingOf(p)?.value;
  return typeof value === 'number' ? value : (value?.likely ?? Number.NaN);
};

describe('air at a bed', () => {
  it('below the far wall is what the throw has left after its way across and down', () => {
    const p = edited(bedAt(3.2), ['routes', 'ducts', 'terminals', 'reg-bed-south', 'distance'], measured(3.2));
    const { plan } = evaluate(p, {});
    const flow = plan.agreement.heating?.registers['reg-bed-south']?.flow ?? 0;
    const { air } = plan.trades;
    const open = air?.model.ok ? (air.model.value.terminals.find((t) => t.id === 'reg-bed-south')?.freeArea ?? 0) : 0;
    const left = speed(p);
    const way = throwTo(left, throwConstants['ceiling one way'], flow / open, open);
    expect(way).toBeCloseTo(3.2 + 2.4 - 0.6, 9);
  });

  it('is slower in the middle of the room than under that wall, and in winter held to less than at a sofa', () => {
    expect(speed(bedAt(1.5))).toBeLessThan(0.01);
    expect(speed(bedAt(3.2))).toBeGreaterThan(0.15);
    expect(findingOf(bedAt(3.2))).toMatchObject({ status: 'fails', limit: { max: 0.15 } });
    expect(findingOf(bedAt(3.2, { kind: 'sofa' }))?.limit?.max).toBe(0.25);
  });

  it('comes straight down on it from a register that blows down, unless it is too warm to', () => {
    const down = (p: Project) => edited(p, ['routes', 'ducts', 'terminals', 'reg-bed-south', 'blows'], 'down');
    expect(speed(down(bedAt(0)))).toBeGreaterThan(speed(down(bedAt(1))));
    expect(speed(down(bedAt(0)))).toBeGreaterThan(0.25);
  });

  it('along the floor reaches a low head before a high one', () => {
    const low = (p: Project) => edited(p, ['routes', 'ducts', 'terminals', 'reg-bed-south', 'place'], 'low');
    expect(speed(low(bedAt(1, { height: measured(0.2) })))).toBeGreaterThan(
      speed(low(bedAt(1, { height: measured(1.4) }))),
    );
  });

  it('is not spoken of where no bed was entered, and asked for where its distance is missing', () => {
    expect(findingOf(edited(demo('tern-ledge'), ['house', 'rooms', 'bed-south', 'rest'], undefined))).toBeUndefined();
    expect(findingOf(bedAt(undefined))).toMatchObject({ status: 'unknown', because: 'missing' });
  });
});
