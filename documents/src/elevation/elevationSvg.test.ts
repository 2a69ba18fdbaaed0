// @vitest-environment jsdom
import { evaluate } from '@kneewall/engine';
import { emptyProject, parseQuantity, type System } from '@kneewall/project';
import { describe, expect, it } from 'vitest';
import { demo } from '../../test/demos.ts';
import { elevationSvg } from './elevationSvg.ts';

describe.each(['us', 'si'] as const)('the wall on paper (%s)', (units: System) => {
  const project = demo('tern-ledge');
  const { plan } = evaluate(project, {}, { units });
  const svg = elevationSvg(plan, project, units) ?? '';
  const document = new DOMParser().parseFromString(svg, 'image/svg+xml');
  const root = document.documentElement;
  const ratio = Number(root.getAttribute('data-scale'));

  it('is a sheet that a printer takes, with nothing that is no number and nothing beyond its edge', () => {
    expect(document.querySelector('parsererror')).toBeNull();
    expect(svg).not.toMatch(/NaN|undefined|Infinity|null/);
    const [, , wide = 0, tall = 0] = (root.getAttribute('viewBox') ?? '').split(' ').map(Number);
    const boxes = [...root.querySelectorAll('rect')].map((r) =>
      ['x', 'y', 'width', 'height'].map((k) => Number(r.getAttribute(k))),
    );
    for (const [x = 0, y = 0, w = 0, h = 0] of boxes) {
      expect(Math.min(x, y)).toBeGreaterThanOrEqual(0);
      expect(x + w).toBeLessThanOrEqual(wide + 1e-6);
      expect(y + h).toBeLessThanOrEqual(tall + 1e-6);
    }
    const lines = [...root.querySelectorAll('text')].map((t) => Number(t.getAttribute('y') ?? 0));
    expect(Math.max(...lines)).toBeLessThan(tall - 10);
  });

  it('is to scale, and each measure says its length in both unit systems', () => {
    const dimensions = [...root.querySelectorAll('.dimension')];
    expect(dimensions).toHaveLength(4);
    for (const d of dimensions) {
      const metres = (Number(d.getAttribute('data-mm')) * ratio) / 1000;
      const [, own = '', other = ''] = /^\w+ (.+) \((.+)\)$/.exec(d.querySelector('text')?.textContent ?? '') ?? [];
      for (const text of [own, other]) {
        const read = parseQuantity(text, 'length');
        expect(read.ok && Math.abs(Number(read.value) - metres), text).toBeLessThan(0.006);
      }
    }
  });

  it('shows every set that reaches, the line, the snow, and the unit', () => {
    expect(root.querySelectorAll('[data-set]').length).toBeGreaterThan(1);
    for (const part of ['.way', '.snow', '.unit', '.out']) expect(root.querySelector(part), part).not.toBeNull();
  });
});

it('is not drawn where no wall is known', () => {
  expect(elevationSvg(evaluate(emptyProject, {}).plan, emptyProject, 'si')).toBeUndefined();
});
