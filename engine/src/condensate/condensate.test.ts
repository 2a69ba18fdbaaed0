import type { Project } from '@kneewall/project';
import { describe, expect, it } from 'vitest';
import { demo } from '../../test/demos.ts';
import { evaluate, type Finding } from '../index.ts';
import { slopeLeast } from './kernels/slope.ts';
import { trapUnderSuction } from './kernels/trap.ts';

const n = (value: number) => ({ value, known: 'measured' });

/** Tern Ledge with entries of its drain changed; undefined takes one out. */
function changed(changes: Readonly<Record<string, unknown>>): Project {
  const project = structuredClone(demo('tern-ledge')) as unknown as { routes: { drain: Record<string, unknown> } };
  for (const [key, value] of Object.entries(changes)) {
    if (value === undefined) delete project.routes.drain[key];
    else project.routes.drain[key] = value;
  }
  return project as unknown as Project;
}
const found = (project: Project, id: string): Finding => {
  const finding = evaluate(project, {}).plan.findings.find((f) => f.id === `condensate/${id}`);
  if (!finding) throw new Error(`no finding ${id}`);
  return finding;
};
const has = (project: Project, id: string): boolean =>
  evaluate(project, {}).plan.findings.some((f) => f.id === `condensate/${id}`);

describe('what a drain is judged by', () => {
  it('the trap is as deep as the suction that the ducts really make, and risers give it its room', () => {
    const low = found(changed({ below: n(0.09) }), 'trap-room');
    expect(low.status).toBe('fails');
    const plan = evaluate(changed({ below: n(0.09) }), {}).plan;
    const { condensate, air } = plan.trades;
    if (!condensate?.pressure.ok || !condensate.trap.ok || !air?.ladder.ok || !air.flows.ok) throw new Error('known');
    const returns = air.ladder.value.filter((r) => r.side === 'return').reduce((sum, r) => sum + r.drop, 0);
    // Return, twice the clean filter, and 125 Pa of a wet coil at the most.
    const suction = returns + 2 * air.flows.value.filterPressure + 125;
    expect(condensate.pressure.value.high).toBeCloseTo(suction, 9);
    expect(condensate.trap.value).toEqual(trapUnderSuction(suction));
    expect(found(changed({ below: n((low.limit?.min ?? 0) + 0.001) }), 'trap-room').status).toBe('ok');
  });

  it('a smaller return, a deeper trap', () => {
    const narrow = structuredClone(demo('tern-ledge')) as unknown as {
      routes: { ducts: { sections: Record<string, { side?: string; diameter?: unknown }> } };
    };
    for (const section of Object.values(narrow.routes.ducts.sections))
      if (section.side === 'return') section.diameter = n(0.2);
    const room = (project: Project) => found(project, 'trap-room').limit?.min ?? 0;
    expect(room(narrow as unknown as Project)).toBeGreaterThan(room(demo('tern-ledge')));
  });

  it('a blower before the coil needs a seal for its pressure instead', () => {
    const pushes = evaluate(changed({ blower: 'before' }), {}).plan.trades.condensate;
    expect(pushes?.pulls).toBe(false);
    expect(pushes?.trap.ok && pushes.trap.value.drop).toBeCloseTo(0.0127, 12);
  });

  it('the least fall is an eighth of an inch in a foot of its own way', () => {
    expect(found(changed({ run: n(9.6), fall: n(0.1) }), 'fall').status).toBe('ok');
    expect(found(changed({ run: n(9.6), fall: n(9.6 * slopeLeast - 0.001) }), 'fall').status).toBe('fails');
  });

  it.each([
    ['vent', 'before', 'fails'],
    ['vent', 'none', 'fails'],
    ['second', 'none', 'fails'],
    ['second', 'switch', 'ok'],
    ['ends', 'waste', 'fails'],
    ['ends', 'gap', 'ok'],
    ['vent', undefined, 'unknown'],
    ['ends', undefined, 'unknown'],
  ] as const)('%s: %s %s', (field, answer, status) => {
    expect(found(changed({ [field]: answer }), field).status).toBe(status);
  });

  it('a drain into a waste pipe carries its caution', () => {
    expect(found(changed({ ends: 'waste' }), 'ends').caution).toMatch(/gas/);
  });

  it('a pan has to be deep and larger than the unit in it', () => {
    const pan = (length: number, depth: number) =>
      changed({ second: 'pan', pan: { length: n(length), width: n(1), depth: n(depth) } });
    expect(found(pan(2, 0.04), 'pan-larger').status).toBe('ok');
    expect(found(pan(1, 0.04), 'pan-larger').status).toBe('fails');
    expect(found(pan(2, 0.03), 'pan-depth').status).toBe('fails');
    expect(has(changed({ second: 'switch' }), 'pan-depth')).toBe(false);
  });

  it('standing water freezes in a cold attic, not in a heated room, and not where somebody empties it', () => {
    expect(found(changed({ place: 'attic' }), 'freezes').status).toBe('fails');
    expect(found(changed({ place: 'inside' }), 'freezes').status).toBe('ok');
    expect(has(changed({ heated: 'yes' }), 'freezes')).toBe(false);
  });

  it('lengths of nothing make nothing infinite', () => {
    const plan = evaluate(changed({ run: n(0), fall: n(0), size: n(0.001), below: n(0) }), {}).plan;
    expect(JSON.stringify(plan.findings.filter((f) => f.trade === 'condensate'))).not.toMatch(/null|NaN|Infinity/);
  });
});
