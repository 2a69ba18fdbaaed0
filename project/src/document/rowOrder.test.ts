import { describe, expect, it } from 'vitest';
import { openProject } from './open.ts';

const is = (value: number) => ({ value, known: 'nameplate' });
type Row = readonly [speed: string, outdoor: number, capacity: number, mode?: string];

function problemsOf(rows: readonly Row[]): string[] {
  const entries = rows.map(([speed, outdoor, capacity, mode = 'heating'], i) => [
    `r${i}`,
    { order: `a0${i}`, mode, speed, outdoor: is(outdoor), capacity: is(capacity) },
  ]);
  const candidates = { unit: { rows: Object.fromEntries(entries) } };
  return openProject(JSON.stringify({ schema: 1, candidates })).problems.map((p) => `${p.grade} ${p.path.join('.')}`);
}

describe('a unit whose least is more than its most', () => {
  it('is asked about, at the row of the lowest speed', () => {
    const rows: Row[] = [
      ['least', 8.3, 6000],
      ['most', 8.3, 5000],
    ];
    expect(problemsOf(rows)).toEqual(['ask candidates.unit.rows.r0.capacity']);
  });

  it('is none where speeds rise, or rows are not at the same temperature or of the same mode', () => {
    const least: Row = ['least', 8.3, 3000];
    expect(problemsOf([least, ['rated', 8.3, 5000], ['most', 8.3, 7000]])).toEqual([]);
    expect(problemsOf([least, ['most', -15, 2500]])).toEqual([]);
    expect(problemsOf([least, ['most', 8.3, 2500, 'cooling']])).toEqual([]);
  });
});
