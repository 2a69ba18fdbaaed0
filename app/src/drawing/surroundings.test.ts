import { emptyProject, type Project } from '@kneewall/project';
import { describe, expect, it } from 'vitest';
import { surroundingsOf } from './surroundings.ts';

const at = (value: number) => ({ value, known: 'measured' as const });
const project: Project = {
  ...emptyProject,
  house: {
    rooms: {
      bed: {
        name: 'Bed',
        outline: [
          [0, 0],
          [3, 0],
          [3, 4],
        ],
      },
      hall: {
        outline: [
          [3, 0],
          [5, 0],
          [5, 4],
        ],
      },
    },
  },
  routes: {
    ducts: {
      handler: { at: { x: at(1), y: at(2) } },
      sections: {
        trunk: {
          points: [
            [1, 2, 3],
            [4, 2, 3],
          ],
        },
        branch: { from: 'trunk' },
      },
    },
  },
};

describe('what stands round a thing that is drawn', () => {
  it('a way begins where the section it joins ends, height and all', () => {
    const { closed, start, ends, ways } = surroundingsOf(project, ['routes', 'ducts', 'sections', 'branch', 'points']);
    expect([closed, start, ways.map((w) => w.id)]).toEqual([false, [4, 2, 3], ['trunk']]);
    expect(ends).toEqual([
      [1, 2, 3],
      [4, 2, 3],
      [1, 2, 0],
    ]);
  });
  it('one that joins the air handler begins there, and its own ends are not among those it is drawn to', () => {
    const { start, ends } = surroundingsOf(project, ['routes', 'ducts', 'sections', 'trunk', 'points']);
    expect([start, ends]).toEqual([[1, 2, 0], [[1, 2, 0]]]);
  });
  it('an outline meets the corners of the other rooms, and a new one begins beyond them', () => {
    const { closed, rooms, ends, start } = surroundingsOf(project, ['house', 'rooms', 'bed', 'outline']);
    expect([closed, rooms.map((r) => r.name), ends.length, start]).toEqual([true, ['hall'], 3, [5, 0]]);
  });
  it('of an empty project is nothing', () => {
    expect(surroundingsOf(emptyProject, ['house', 'rooms', 'x', 'outline'])).toMatchObject({ rooms: [], ends: [] });
  });
});
