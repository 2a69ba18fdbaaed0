import { describe, expect, it } from 'vitest';
import {
  bendLoss,
  criteriaTogether,
  criterionCurves,
  endReflection,
  fanSound,
  grillePeak,
  grilleSound,
  noiseCriterion,
  pressureRise,
  roomEffect,
} from './index.ts';

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

describe('sound of blowers', () => {
  it('rises by 3 dB with twice the air and by 6 dB with twice the pressure, in every octave (published form)', () => {
    const base = fanSound(0.3, 100);
    for (const [i, x] of fanSound(0.6, 100).entries()) expect(x - (base[i] ?? 0)).toBeCloseTo(3.01, 2);
    for (const [i, x] of fanSound(0.3, 200).entries()) expect(x - (base[i] ?? 0)).toBeCloseTo(6.02, 2);
    expect(pressureRise(200, 100)).toBeCloseTo(6.02, 2);
  });

  it('of one cfm at one inch is the printed specific power, with the tone of the blades (from memory)', () => {
    expect(fanSound(0.47194745e-3, 249.08891).map(Math.round)).toEqual([53, 53, 43, 38, 36, 31, 26, 21]);
  });

  it('stays in a duct that ends in a wall as the handbook table has it for 8 in (from memory, within 1 dB)', () => {
    for (const [band, printed] of [
      [63, 16],
      [125, 10],
      [250, 5],
      [500, 2],
    ] as const)
      expect(Math.abs(endReflection(band, 0.2032) - printed)).toBeLessThan(1);
    expect([125, 250, 500, 2000].map((band) => bendLoss(band, 0.254))).toEqual([0, 1, 2, 3]);
  });
});
