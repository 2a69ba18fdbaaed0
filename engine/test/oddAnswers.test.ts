import type { Project } from '@kneewall/project';
import { describe, expect, it } from 'vitest';
import { evaluate } from '../src/index.ts';
import { demo, numbersIn } from './demos.ts';

const is = (value: number) => ({ value, known: 'measured' });
const registers = 'routes.ducts.terminals.reg-living';

/** Answers that a person may well give, each of which once made a part of the plan break down or not finite. */
const odd: readonly (readonly [what: string, changes: Readonly<Record<string, number>>])[] = [
  ['a place that hardly needs heat, its drain never frozen', { 'site.coldNight': 14 }],
  ['a register of no width, a wire of no size', { [`${registers}.width`]: 0, 'routes.wires.outdoor.size': 0 }],
  ['a register at a wall 0 m away, no fuel burned', { [`${registers}.distance`]: 0, 'house.fuel.energy': 0 }],
];

function changed(changes: Readonly<Record<string, number>>): Project {
  const project = structuredClone(demo('juniper-flat')) as unknown as Record<string, unknown>;
  for (const [path, value] of Object.entries(changes)) {
    const keys = path.split('.');
    const last = keys.pop() ?? '';
    const parent = keys.reduce((at, key) => {
      at[key] ??= {};
      return at[key] as Record<string, unknown>;
    }, project);
    parent[last] = is(value);
  }
  return project as unknown as Project;
}

describe('an odd answer', () => {
  it.each(odd)('%s: unknown where it must be, never a fault, every number finite', (_, changes) => {
    const { plan } = evaluate(changed(changes), {});
    expect(plan.findings.filter((f) => f.because === 'fault')).toEqual([]);
    expect([...numbersIn(plan)].filter(([, x]) => !Number.isFinite(x))).toEqual([]);
  });
});
