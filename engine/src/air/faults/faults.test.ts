import type { Project } from '@kneewall/project';
import { describe, expect, it } from 'vitest';
import { demo } from '../../../test/demos.ts';
import { evaluate } from '../../index.ts';

type Tree = Record<string, Record<string, unknown>>;
const entered = (value: number) => ({ value, known: 'measured' });

function changed(change: (sections: Tree, terminals: Tree, ducts: Tree) => void): Project {
  const copy = structuredClone(demo('tern-ledge')) as unknown as {
    routes: { ducts: Tree & { sections: Tree; terminals: Tree } };
  };
  const { ducts } = copy.routes;
  change(ducts.sections, ducts.terminals, ducts);
  return copy as unknown as Project;
}
const only = (tree: Tree, keep: (id: string) => boolean): void => {
  for (const id of Object.keys(tree)) if (!keep(id)) delete tree[id];
};
const set = (tree: Tree, id: string, more: Record<string, unknown>): void => {
  Object.assign(tree[id] ?? {}, more);
};

describe('ducts with which no air can flow as meant', () => {
  it.each<[string, Parameters<typeof changed>[0], string]>([
    ['runs in a circle', (s) => set(s, 'supply-plenum', { from: 'supply-bath' }), 'run-circles:supply-plenum'],
    ['a run that joins nothing', (s) => set(s, 'supply-bath', { from: 'gone' }), 'run-joins-nothing:supply-bath'],
    [
      'a supply on the return',
      (s) => set(s, 'supply-bath', { from: 'return-box' }),
      'run-joins-other-side:supply-bath',
    ],
    ['a run to nowhere', (_s, t) => set(t, 'reg-bath', { section: 'supply-work' }), 'run-ends-blind:supply-bath'],
    ['a diameter of nothing', (s) => set(s, 'supply-bath', { diameter: entered(0) }), 'run-without-size:supply-bath'],
    [
      'a run without length',
      (s) => set(s, 'supply-bath', { length: entered(0), fittings: {} }),
      'run-without-length:supply-bath',
    ],
    ['a register at no run', (_s, t) => set(t, 'reg-bath', { section: 'gone' }), 'register-without-run:reg-bath'],
    [
      'a return of no area',
      (_s, t) => set(t, 'grille-hall', { width: entered(0) }),
      'register-without-opening:grille-hall',
    ],
    ['a filter of no area', (_s, _t, d) => set(d, 'filter', { width: entered(0) }), 'filter-without-face'],
    ['no return grille', (_s, t) => only(t, (id) => id !== 'grille-hall'), 'no-grilles'],
    ['no register', (_s, t) => only(t, (id) => id === 'grille-hall'), 'no-registers'],
    [
      'one register for all',
      (_s, t) => only(t, (id) => id === 'grille-hall' || id === 'reg-bath'),
      'one-register:reg-bath',
    ],
  ])('%s fails by its place', (_name, change, id) => {
    const { findings } = evaluate(changed(change), {}).plan;
    const finding = findings.find((f) => f.id === `air/${id}`);
    expect(finding).toMatchObject({ status: 'fails' });
    expect(findings.every((f) => f.because !== 'fault')).toBe(true);
  });

  it('a table with two points at one flow fails by its setting', () => {
    const copy = structuredClone(demo('tern-ledge')) as unknown as {
      candidates: Record<string, { blower: { speeds: Record<string, { points: Tree }> } }>;
    };
    for (const { points } of Object.values(copy.candidates['unit-24']?.blower.speeds ?? {}))
      for (const p of Object.values(points).slice(0, 2)) p.flow = entered(0.3);
    const { findings } = evaluate(copy as unknown as Project, {}).plan;
    expect(findings.find((f) => f.id.startsWith('air/table-out-of-order:'))).toMatchObject({ status: 'fails' });
  });

  it('the demo has none of it, nor has a project in which nothing is drawn yet', () => {
    const kinds = /^air\/(run-|register-|filter-without|table-out|no-|one-register|unsolvable)/;
    for (const name of ['tern-ledge', 'juniper-flat'] as const)
      expect(evaluate(demo(name), {}).plan.findings.filter((f) => kinds.test(f.id))).toEqual([]);
    const bare = changed((s, t) => {
      only(s, () => false);
      only(t, () => false);
    });
    expect(evaluate(bare, {}).plan.findings.filter((f) => kinds.test(f.id))).toEqual([]);
  });
});
