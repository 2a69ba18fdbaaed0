// @vitest-environment jsdom
import { evaluate, runJob } from '@kneewall/engine';
import { describe, expect, it } from 'vitest';
import { demo } from '../../test/demos.ts';
import { passageSvg } from './passageSvg.ts';

describe('a way in on paper', () => {
  const project = demo('tern-ledge');
  const first = evaluate(project, {});
  const job = first.wanted.find((j) => j.kind === 'access/passage');
  const results = job ? { [job.key]: runJob(job, { blob: () => undefined, tell: () => {} }) } : {};
  const { plan } = evaluate(project, results);

  it('is no sheet before it is planned', () => {
    expect(passageSvg(first.plan, project, 'si')).toBeUndefined();
  });

  it.each(['us', 'si'] as const)('is drawn to scale: its piece is as long as the data sheet says (%s)', (units) => {
    const svg = passageSvg(plan, project, units) ?? '';
    const document = new DOMParser().parseFromString(svg, 'image/svg+xml');
    expect(document.querySelector('parsererror')).toBeNull();
    expect(svg).not.toMatch(/NaN|undefined|Infinity|null/);
    expect(passageSvg(plan, project, units)).toBe(svg);
    const ratio = Number(document.documentElement.getAttribute('data-scale'));
    const points = (document.querySelector('.tight')?.getAttribute('points') ?? '')
      .split(' ')
      .map((p) => p.split(',').map(Number));
    const side = (i: number, j: number): number =>
      (Math.hypot((points[i]?.[0] ?? 0) - (points[j]?.[0] ?? 0), (points[i]?.[1] ?? 0) - (points[j]?.[1] ?? 0)) *
        ratio) /
      1000;
    // The chosen unit's handler is 1.10 by 0.77 by 0.30 m, its outdoor unit 0.95 by 0.84 by 0.37 m.
    const sides = [1.1, 0.77, 0.3, 0.95, 0.84, 0.37];
    for (const s of [side(0, 1), side(1, 2)]) expect(Math.min(...sides.map((x) => Math.abs(x - s)))).toBeLessThan(2e-4);
  });
});
