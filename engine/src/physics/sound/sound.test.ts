import { describe, expect, it } from 'vitest';
import { criteriaTogether, criterionCurves, grillePeak, grilleSound, noiseCriterion, roomEffect } from './index.ts';

const grille = { area: 0.04, pressure: 10, velocity: 3 };

describe('sound of grilles', () => {
  it('is loudest in the octave nearest 160 Hz a metre a second, and rises by 9 dB when the pressure doubles', () => {
    const levels = grilleSound({ ...grille, velocity: 500 / 160 });
    expect(levels.indexOf(Math.max(...levels))).toBe(3);
    expect(levels[3]).toBeCloseTo(grillePeak(grille), 12);
    expect(levels[2]).toBeCloseTo(grillePeak(grille) - 3, 1);
    expect(grillePeak({ ...grille, pressure: 20 }) - grillePeak(grille)).toBeCloseTo(9.03, 2);
  });

  it('far from a source in a dead room falls by 6 dB for each doubling of distance', () => {
    const dead = { floor: 1e6, height: 3, absorption: 0.999 };
    expect(roomEffect(dead, 2) - roomEffect(dead, 4)).toBeCloseTo(6.02, 2);
  });
});

describe('the noise criterion', () => {
  it('of each curve is the curve itself, and a decibel anywhere above it counts', () => {
    for (const [nc, levels] of criterionCurves) {
      expect(noiseCriterion(levels)).toBeCloseTo(nc, 12);
      for (const band of levels.keys())
        expect(noiseCriterion(levels.map((x, i) => (i === band ? x + 1 : x)))).toBeGreaterThan(nc);
    }
  });

  it('goes on below and above the curves that are drawn', () => {
    expect(noiseCriterion(Array.from({ length: 8 }, () => -10))).toBeLessThan(15);
    expect(noiseCriterion(Array.from({ length: 8 }, () => 100))).toBeGreaterThan(70);
  });

  it('of two equal sounds is 3 higher than of one', () => {
    expect(criteriaTogether([25, 25])).toBeCloseTo(28.01, 2);
    expect(criteriaTogether([25])).toBeCloseTo(25, 12);
  });
});
