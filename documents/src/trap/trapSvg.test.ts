// @vitest-environment jsdom
import { evaluate } from '@kneewall/engine';
import { emptyProject, type System } from '@kneewall/project';
import { describe, expect, it } from 'vitest';
import { demo } from '../../test/demos.ts';
import { trapPicture } from './trapPicture.ts';
import { trapSvg } from './trapSvg.ts';

describe.each(['us', 'si'] as const)('the trap on paper (%s)', (units: System) => {
  const project = demo('tern-ledge');
  const { plan } = evaluate(project, {}, { units });
  const svg = trapSvg(plan, project, units) ?? '';
  const document = new DOMParser().parseFromString(svg, 'image/svg+xml');
  const root = document.documentElement;

  it('is a sheet that a printer takes, with nothing that is no number', () => {
    expect(document.querySelector('parsererror')).toBeNull();
    expect(svg).not.toMatch(/NaN|undefined|Infinity|null/);
    const [, , wide] = (root.getAttribute('viewBox') ?? '').split(' ').map(Number);
    expect(root.getAttribute('width')).toBe(`${wide}mm`);
    expect(wide).toBeLessThan(220);
  });

  it('is full size: its two measures in millimetres are those of the plan', () => {
    const trap = plan.trades.condensate?.trap;
    if (!trap?.ok) throw new Error('known');
    const mm = (id: string) => Number(root.querySelector(`[data-measure="${id}"]`)?.getAttribute('data-mm'));
    expect(mm('drop')).toBeCloseTo(1000 * trap.value.drop, 2);
    expect(mm('seal')).toBeCloseTo(1000 * trap.value.seal, 2);
    const bars = [...root.querySelectorAll('[data-mm][x1]')].map((b) => [
      Number(b.getAttribute('x2')) - Number(b.getAttribute('x1')),
      Number(b.getAttribute('data-mm')),
    ]);
    for (const [long, said] of bars) expect(long).toBeCloseTo(said ?? 0, 6);
  });
});

it('water stands level in both legs, as high as the trap’s outlet lies, and covers the lowest pipe by the seal', () => {
  const { water, measures } = trapPicture({ drop: 50, seal: 25, inner: 21, outer: 27 });
  const heights = water.map(([, y]) => y);
  const top = Math.min(...heights);
  expect(water.filter(([, y]) => y === top)).toHaveLength(4);
  const seal = measures.find((m) => m.id === 'seal');
  expect(seal?.from).toBe(top);
  // The upper side of the lowest pipe is its underside less the bore.
  expect(seal?.to).toBeCloseTo(Math.max(...heights) - 21, 9);
});

it('is not drawn where its height is not known', () => {
  expect(trapSvg(evaluate(emptyProject, {}).plan, emptyProject, 'si')).toBeUndefined();
});

it.each([
  ['3/4 in pipe', 20.9, 26.7],
  ['1 in pipe', 26.6, 33.4],
])('at full size %s keeps inside the frame of a letter sheet', (_, inner, outer) => {
  const { box } = trapPicture({ drop: 60, seal: 30, inner, outer });
  expect(box.right - box.left + 8).toBeLessThanOrEqual(215.9 - 2 * 13 + 3);
});
