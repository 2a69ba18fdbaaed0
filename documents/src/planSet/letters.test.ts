import { describe, expect, it } from 'vitest';
import { leftToRight, printable } from './letters.ts';

const latin = (code: number): boolean => code < 0x2000;

describe('a text on paper', () => {
  it.each([
    ['feet and inches', '5′ 3½″', (code: number) => code < 0x2100, '5′ 3½″'],
    ['a house no font has', 'Home 🏠!', latin, 'Home ⟨U+1F3E0⟩!'],
    ['marks that steer direction', 'a\u202eb\u200fc', latin, 'abc'],
    ['a letter written as two', 'e\u0301', latin, 'é'],
    ['a narrow blank that the font lacks', '1\u202f000', latin, '1\u00a0000'],
    ['lines', 'a\nb', latin, 'a\nb'],
  ])('keeps %s', (_, text, has, shown) => expect(printable(text, has)).toBe(shown));
});

describe('the order of mixed directions', () => {
  // By rules N1 and L2 of UAX 9, by hand; letters inside a piece stay as they are read. A number after Hebrew belongs
  // to its run.
  it.each([
    ['plain text', 'North bedroom', ['North bedroom']],
    ['two Hebrew words', 'שלום עולם', ['עולם', ' ', 'שלום']],
    ['a number after Arabic', 'مرحبا 24', ['24', ' ', 'مرحبا']],
    [
      'a Hebrew name in an English line',
      'Room: שלום עולם, 12 m',
      ['Room:', ' ', '12', ' ', 'עולם,', ' ', 'שלום', ' ', 'm'],
    ],
  ])('of %s', (_, text, pieces) => expect(leftToRight(text)).toEqual(pieces));
});
