// @vitest-environment jsdom
import { evaluate } from '@kneewall/engine';
import { emptyProject, type Project, type System } from '@kneewall/project';
import { describe, expect, it } from 'vitest';
import { demo } from '../../test/demos.ts';
import { oneLineSvg } from './oneLineSvg.ts';

function drawn(project: Project, units: System): Element {
  const svg = oneLineSvg(evaluate(project, {}, { units }).plan, project, units) ?? '';
  const document = new DOMParser().parseFromString(svg, 'image/svg+xml');
  expect(document.querySelector('parsererror')).toBeNull();
  expect(svg).not.toMatch(/NaN|undefined|Infinity|null/);
  return document.documentElement;
}

const textsOf = (svg: Element): string[] => [...svg.querySelectorAll('text')].map((t) => t.textContent ?? '');

describe('the supply in one line', () => {
  it.each(['us', 'si'] as const)(
    'of one’s own power: battery, panels, generator, inverter, one circuit (%s)',
    (units) => {
      const texts = textsOf(drawn(demo('tern-ledge'), units));
      for (const title of [
        'Battery',
        'Solar panels',
        'Generator',
        'Inverter and charger',
        'Outdoor unit',
        'Air handler',
      ])
        expect(texts).toContain(title);
      expect(texts.filter((t) => t === 'Disconnect')).toHaveLength(1);
      expect(texts).toContain('no circuit of its own');
    },
  );

  it('of the grid: a breaker and a disconnect for each of two circuits, and what the plan says of them', () => {
    const project = demo('juniper-flat');
    const texts = textsOf(drawn(project, 'si'));
    expect(texts.filter((t) => t === 'Disconnect')).toHaveLength(2);
    expect(texts).not.toContain('Battery');
    const runs = evaluate(project, {}).plan.trades.circuit?.runs ?? [];
    expect(runs).toHaveLength(2);
    for (const { protection } of runs)
      expect(texts).toContain(`breaker or fuse ${protection.ok ? protection.value.size : Number.NaN} A`);
  });

  it('keeps within its frame, says who decides, and escapes what a person typed', () => {
    const project = demo('juniper-flat');
    const odd = '<b>“Code” & 7\u0000';
    const { wires } = project.routes ?? {};
    const named = { ...project, routes: { ...project.routes, wires: { ...wires, code: odd } } } as Project;
    const svg = drawn(named, 'us');
    expect(textsOf(svg).some((t) => t.includes('licensed electrician'))).toBe(true);
    expect(textsOf(svg).some((t) => t.includes('<b>“Code” & 7'))).toBe(true);
    const [, , wide = 0, high = 0] = (svg.getAttribute('viewBox') ?? '').split(' ').map(Number);
    for (const r of svg.querySelectorAll('rect.box')) {
      const [x, y, w, h] = ['x', 'y', 'width', 'height'].map((k) => Number(r.getAttribute(k)));
      expect((x ?? 0) >= 10 && (x ?? 0) + (w ?? 0) <= wide - 10).toBe(true);
      expect((y ?? 0) >= 10 && (y ?? 0) + (h ?? 0) <= high - 10).toBe(true);
    }
  });

  it('is not drawn where no unit’s wires are planned', () => {
    expect(oneLineSvg(evaluate(emptyProject, {}).plan, emptyProject, 'si')).toBeUndefined();
  });
});
