import { expect, it } from 'vitest';
import { columnWidths } from './columns.ts';

const given = (width: number, least: number) => ({ width, least, most: least });
const share = (least: number) => ({ width: '*' as const, least, most: 1000 });

it('a given width holds its longest word where the others keep theirs, and always fills the room', () => {
  expect(columnWidths([given(62, 50), share(80)], 300)).toEqual([62, 238]);
  expect(columnWidths([given(62, 95), share(80)], 300)).toEqual([95, 205]);
  expect(columnWidths([given(62, 95), given(40, 60), share(80), share(70)], 320)).toEqual([95, 60, 82.5, 82.5]);
});

it('a given width stays as it is where its longest word would leave another column too little', () => {
  expect(columnWidths([given(62, 240), share(80)], 300)).toEqual([62, 238]);
});
