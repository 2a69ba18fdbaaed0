import { evaluate } from '@kneewall/engine';
import type { Project } from '@kneewall/project';
import { describe, expect, it } from 'vitest';
import { changedSince } from '../src/index.ts';
import { planSet, sheetMarks } from '../src/planSet/index.ts';
import { demo } from './demos.ts';

const marksOf = (project: Project) =>
  sheetMarks(planSet({ plan: evaluate(project, {}, { units: 'us' }).plan, project, units: 'us' }));

describe('what a print no longer tells', () => {
  const before = marksOf(demo('tern-ledge'));

  it('is nothing as long as the project stands', () => {
    expect(Object.keys(before)).toContain('The wall and the outdoor unit');
    expect(changedSince(before, marksOf(demo('tern-ledge')))).toEqual({ changed: [], added: [], gone: [] });
  });

  it('is the sheets that a moved outdoor unit is on, and not those it is not on', () => {
    const project = structuredClone(demo('tern-ledge')) as Project & {
      routes: { lineset: { place: { x: { value: number } } } };
    };
    expect(project.routes.lineset.place.x.value).toBeGreaterThan(0);
    project.routes.lineset.place.x.value += 0.3;
    const { changed, added, gone } = changedSince(before, marksOf(project));
    expect(changed).toContain('The wall and the outdoor unit');
    expect(changed).not.toContain('The ducts in plan');
    expect(changed).not.toContain('Loads in short');
    expect([added, gone]).toEqual([[], []]);
  });
});
