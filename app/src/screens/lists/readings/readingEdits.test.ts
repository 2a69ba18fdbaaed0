import { describe, expect, it } from 'vitest';
import { readingEdit, visitEdit } from './readingEdits.ts';

describe('what is written for readings', () => {
  const value = { value: 93, known: 'measured' as const, as: '0.37 inH2O' };

  it('a reading goes behind all others, under a free id', () => {
    const taken = { 'reading-1': { order: 'm' }, 'reading-2': { order: 'p' } };
    const edit = readingEdit(taken, { visit: 'v', expected: 'air/static', means: 'gauge', repeats: 3, value });
    expect(edit.path).toEqual(['readings', 'reading-3']);
    expect(edit.after).toMatchObject({ order: 'q', visit: 'v', value, repeats: { value: 3 } });
  });

  it('read once it says nothing of repeats', () => {
    const edit = readingEdit({}, { visit: 'v', expected: 'air/static', means: 'gauge', repeats: 1, value });
    expect(edit.after).not.toHaveProperty('repeats');
  });

  it('a visit is begun with its day', () => {
    expect(visitEdit({}, '2026-11-28')).toEqual({
      path: ['visits', 'visit-1'],
      after: { order: 'm', day: '2026-11-28' },
    });
  });
});
