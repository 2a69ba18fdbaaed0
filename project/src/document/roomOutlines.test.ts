import { describe, expect, it } from 'vitest';
import { openProject } from './open.ts';
import { resolveProject } from './resolve.ts';

const square = (side: number) => [
  [0, 0],
  [side, 0],
  [side, side],
  [0, side],
];
const opened = (room: object) => {
  const found = openProject(JSON.stringify({ schema: 1, site: { units: 'si' }, house: { rooms: { bed: room } } }));
  if (!found.ok) throw new Error('not opened');
  return found;
};
const areaOf = (room: object) => resolveProject(opened(room).project).house.rooms.bed?.floorArea;
const entered = (value: number) => ({ value, known: 'measured' });
const path = ['house', 'rooms', 'bed', 'outline'];

describe('a room with an outline', () => {
  it('is as large as the outline, whatever area is entered', () => {
    expect(areaOf({ outline: square(4) })).toMatchObject({ likely: 16, path: path.join('.') });
    expect(areaOf({ outline: square(4), floorArea: entered(15) })).toMatchObject({ low: 16, likely: 16, high: 16 });
  });

  it.each([
    [
      'crossed',
      [
        [0, 0],
        [4, 4],
        [4, 0],
        [0, 4],
      ],
    ],
    [
      'no more than a line',
      [
        [0, 0],
        [4, 0],
      ],
    ],
  ])('keeps its entered area while the outline is %s', (_how, outline) => {
    expect(areaOf({ outline, floorArea: entered(15) })).toMatchObject({ likely: 15, known: 'measured' });
    expect(areaOf({ outline })).toMatchObject({ missing: true });
  });

  it('is asked about with both areas where they differ by more than a tenth', () => {
    expect(opened({ outline: square(4), floorArea: entered(14.6) }).problems).toEqual([]);
    const [problem, ...others] = opened({ outline: square(4), floorArea: entered(14.5) }).problems;
    expect(others).toEqual([]);
    expect(problem).toMatchObject({ code: 'area-differs', grade: 'ask', path, found: 16, allowed: 14.5 });
    expect(problem?.mend).toMatch(/16.*14\.5/);
  });

  it('is asked about where its sides cross, by the corners they begin at', () => {
    const [problem] = opened({
      outline: [
        [0, 0],
        [4, 4],
        [4, 0],
        [0, 4],
      ],
      floorArea: entered(1),
    }).problems;
    expect(problem).toMatchObject({ code: 'outline-crossed', grade: 'ask', path });
    expect(problem?.mend).toContain('corner 1 meets the side from corner 3');
  });
});
