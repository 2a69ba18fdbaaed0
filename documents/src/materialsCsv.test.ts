import { describe, expect, it } from 'vitest';
import { csvCell } from './index.ts';

describe('cells of a shopping list', () => {
  it.each([
    ['=1+1', "'=1+1"],
    [' @x', "' @x"],
    ['＝cmd', "'＝cmd"],
    ['12 in "round"', '"12 in ""round"""'],
    ['a,b', '"a,b"'],
    ['plain', 'plain'],
  ])('%j is written as %j', (text, cell) => {
    expect(csvCell(text)).toBe(cell);
  });
});
