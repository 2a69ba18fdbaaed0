import { describe, expect, it } from 'vitest';
import { openProject } from './open.ts';

const problemsOf = (length: number, points: readonly (readonly number[])[], units: 'us' | 'si' = 'si') => {
  const section = { length: { value: length, known: 'measured' }, points };
  const opened = openProject(
    JSON.stringify({ schema: 1, site: { units }, routes: { ducts: { sections: { run: section } } } }),
  );
  if (!opened.ok) throw new Error('not opened');
  return opened.problems;
};

describe('a duct that is drawn', () => {
  // 3 across, 4 up the plan and 12 up: 13 in space.
  const thirteen = [
    [0, 0, 0],
    [3, 4, 12],
  ];

  it.each([13, 12, 14])('passes while it is within a tenth of the %d m entered', (length) => {
    expect(problemsOf(length, thirteen)).toEqual([]);
  });

  it('is asked about with both lengths where it differs by more, and kept', () => {
    const [problem, ...others] = problemsOf(10, thirteen);
    expect(others).toEqual([]);
    expect(problem).toMatchObject({
      code: 'length-differs',
      grade: 'ask',
      path: ['routes', 'ducts', 'sections', 'run', 'points'],
      found: 13,
      allowed: 10,
    });
    expect(problem?.mend).toContain('13');
    expect(problem?.mend).toContain('10');
  });

  it('with a single point is no way yet', () => {
    expect(problemsOf(10, [[0, 0, 0]])).toEqual([]);
  });
});
