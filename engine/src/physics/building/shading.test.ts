import { describe, expect, it } from 'vitest';
import { rad } from '../exact.ts';
import { openViews, sunlitShare } from './shading.ts';

/** Light from so high above the level and so far to the right of the wall's normal. */
const from = (height: number, aside: number) => ({
  right: Math.cos(height * rad) * Math.sin(aside * rad),
  up: Math.sin(height * rad),
  out: Math.cos(height * rad) * Math.cos(aside * rad),
});
const overhang = { kind: 'overhang' as const, depth: 1, offset: 0.5, left: 100, right: 100 };
const wide = { width: 3, height: 2, shades: [overhang] };

describe('shade on a window', () => {
  // Geometry of the profile angle: shadow depth below the head is depth tan(profile) less the gap.
  it.each([20, 35, 45, 60, 75])('of a long overhang with the sun ahead at %i degrees', (height) => {
    const shadow = Math.min(2, Math.max(0, Math.tan(height * rad) - 0.5));
    expect(sunlitShare(wide, from(height, 0))).toBeCloseTo(1 - shadow / 2, 1);
  });

  it('of a fin with the sun to the right', () => {
    const fin = { kind: 'fin' as const, side: 'right' as const, depth: 1, offset: 0.2, from: -100, to: 100 };
    const pane = { width: 3, height: 2, shades: [fin] };
    expect(sunlitShare(pane, from(0, 45))).toBeCloseTo(1 - 0.8 / 3, 9);
    expect(sunlitShare(pane, from(30, 45))).toBeCloseTo(1 - 0.8 / 3, 9);
    expect(sunlitShare(pane, from(30, -45))).toBe(1);
  });

  it('ends where a short fin ends', () => {
    const fin = { kind: 'fin' as const, side: 'left' as const, depth: 1, offset: 0, from: 0, to: 1 };
    const pane = { width: 3, height: 2, shades: [fin] };
    expect(sunlitShare(pane, from(0, -45))).toBeCloseTo(1 - (1 * 1) / 6, 9);
  });

  it('counts shadows that overlap once', () => {
    const twice = { ...wide, shades: [overhang, overhang] };
    expect(sunlitShare(twice, from(50, 20))).toBe(sunlitShare(wide, from(50, 20)));
  });

  it('is whole behind the wall and none without shades', () => {
    expect(sunlitShare(wide, { right: 0, up: 1, out: -0.1 })).toBe(0);
    expect(sunlitShare({ ...wide, shades: [] }, from(80, 0))).toBe(1);
  });

  // A strip of wall under an endless overhang: what a point sees of the sky has a closed form, (1 - sin θ) of the half it
  // had, θ the height of the overhang's edge; averaged over the glass by hand.
  it('takes from even sky light what the closed form takes', () => {
    const { sky, ground } = openViews({ width: 3, height: 2, shades: [{ ...overhang, left: 1e4, right: 1e4 }] }, 90);
    const points = Array.from({ length: 400 }, (_, i) => 0.5 + ((i + 0.5) / 400) * 2);
    const exact = points.reduce((a, below) => a + Math.sin(Math.atan2(below, 1)), 0) / points.length;
    expect(Math.abs(sky - exact)).toBeLessThan(0.015);
    expect(ground).toBe(1);
  });
});
