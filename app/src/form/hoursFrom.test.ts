import { describe, expect, it } from 'vitest';
import { hoursFrom } from './hoursFrom.ts';

describe('hours typed in a row', () => {
  it('takes blanks, lines, tabs and semicolons, and commas as points where no blank follows', () => {
    expect(hoursFrom('1 2\n3\t4;5, 6')).toEqual([1, 2, 3, 4, 5, 6]);
    expect(hoursFrom('0,5 1.25')).toEqual([0.5, 1.25]);
    expect(hoursFrom('  ')).toEqual([]);
  });
  it('refuses words and what is below nothing', () => {
    expect(hoursFrom('1 two 3')).toBe('not-numbers');
    expect(hoursFrom('1 -2')).toBe('not-numbers');
  });
});
