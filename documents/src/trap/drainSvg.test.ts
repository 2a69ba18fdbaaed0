// @vitest-environment jsdom
import { evaluate } from '@kneewall/engine';
import { emptyProject, type System } from '@kneewall/project';
import { describe, expect, it } from 'vitest';
import { demo } from '../../test/demos.ts';
import { type DrainFacts, drainPicture } from './drainPicture.ts';
import { drainSvg } from './drainSvg.ts';

describe.each([
  ['juniper-flat', 'us'],
  ['juniper-flat', 'si'],
  ['tern-ledge', 'si'],
] as const)('the drain of %s on paper (%s)', (name, units: System) => {
  const project = demo(name);
  const { plan } = evaluate(project, {}, { units });
  const svg = drainSvg(plan, project, units) ?? '';
  const document = new DOMParser().parseFromString(svg, 'image/svg+xml');

  it('is a sheet with a row for each stretch and nothing that is no number', () => {
    expect(document.querySelector('parsererror')).toBeNull();
    expect(svg).not.toMatch(/NaN|undefined|Infinity|null/);
    const stretches = plan.trades.condensate?.stretches;
    if (!stretches?.ok) throw new Error('known');
    expect(document.querySelectorAll('.schedule .row')).toHaveLength(stretches.value.length);
  });

  it('keeps inside its frame', () => {
    const [, , wide = 0] = (document.documentElement.getAttribute('viewBox') ?? '').split(' ').map(Number);
    for (const line of document.querySelectorAll('.drain polyline'))
      for (const point of (line.getAttribute('points') ?? '').split(' ')) {
        const [x = 0] = point.split(',').map(Number);
        expect(x).toBeGreaterThanOrEqual(0);
        expect(x).toBeLessThanOrEqual(wide - 26);
      }
  });
});

describe('its way', () => {
  const facts: DrainFacts = {
    stretches: [
      { name: 'a', place: 'attic', run: 4, fall: 0.05, least: 4 / 96 },
      { name: 'b', place: 'outdoors', run: 2, fall: 0.01, least: 2 / 96 },
    ],
    second: 'overflow',
  };
  const { lines, stretched } = drainPicture(facts, String);
  const points = (of: string) => lines.filter((l) => l.of === of).map((l) => l.points);

  it('is drawn to one scale along and one, as said, down', () => {
    const way = points('pipe').at(-1) ?? [];
    const [[x0, y0], [x1, y1], [x2, y2]] = way as [[number, number], [number, number], [number, number]];
    expect((x1 - x0) / (x2 - x1)).toBeCloseTo(2, 9);
    expect((y1 - y0) / (y2 - y1)).toBeCloseTo(5, 9);
    expect((y1 - y0) / (x1 - x0) / (0.05 / 4)).toBeCloseTo(stretched, 9);
    const [least = []] = points('least');
    expect((least.at(-1)?.[1] ?? 0) - y0).toBeCloseTo(((y2 - y0) * (6 / 96)) / 0.06, 9);
  });

  it('the second outlet lies above the first, and the pan’s line below both', () => {
    const first = Number(points('pipe')[0]?.[0]?.[1]);
    expect(points('second')[0]?.[0]?.[1]).toBeLessThan(first);
    const pan = drainPicture({ ...facts, second: 'pan' }, String).lines.find((l) => l.of === 'second');
    expect(pan?.points[0]?.[1]).toBeGreaterThan(first);
  });
});

it('is not drawn where its way is not known', () => {
  expect(drainSvg(evaluate(emptyProject, {}).plan, emptyProject, 'si')).toBeUndefined();
});
