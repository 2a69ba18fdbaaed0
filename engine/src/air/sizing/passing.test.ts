import { describe, expect, it } from 'vitest';
import { inch } from '../../physics/exact.ts';
import type { Space } from './asked.ts';
import { passing } from './passing.ts';
import type { DuctShape } from './stock.ts';

const box = (w: number, h: number): DuctShape => ({ kind: 'rectangular', width: w * inch, height: h * inch });
const round = (d: number): DuctShape => ({ kind: 'round', diameter: d * inch });
const bay = (depth?: number, width?: number): Space => ({
  ...(depth === undefined ? {} : { depth: depth * inch }),
  ...(width === undefined ? {} : { width: width * inch }),
});

// By hand: R-8 (1.409 m²K/W) is 57.2 mm or 2 1/4 in of wrap, so 4 1/2 in on both sides together.
describe('a duct and the space it has to pass', () => {
  it.each<[string, DuctShape, number, Space, readonly string[], boolean]>([
    ['bare, exactly as large', round(8), 0, bay(8, 8), [], false],
    ['bare, 1/16 in too large both ways', round(8 + 1 / 16), 0, bay(8, 8), ['depth', 'width'], false],
    ['8 in in R-8, in 12 1/2 in', round(8), 1.409, bay(12.51), [], false],
    ['8 in in R-8, in 12 3/8 in', round(8), 1.409, bay(12.375), ['depth'], false],
    ['lying flat', box(16, 8), 0, bay(9, 17), [], false],
    ['only on edge', box(16, 8), 0, bay(17, 9), [], true],
    ['neither way', box(16, 8), 0, bay(9, 15), ['width'], false],
    ['on edge is no way where the width is not known', box(16, 8), 0, bay(7), ['depth'], false],
    ['free', box(24, 16), 1.409, {}, [], false],
  ])('%s', (_what, shape, insulation, space, limits, onEdge) => {
    const found = passing(shape, insulation, space);
    expect(found.breaks.map((b) => b.limit)).toEqual(limits);
    expect(found.onEdge ?? false).toBe(onEdge);
  });
});
