import { describe, expect, it } from 'vitest';
import { chanceOf, normalShare, xorshift } from './chance.ts';
import type { ClimateMonth } from './result.ts';
import { syntheticYear } from './syntheticYear.ts';
import { monthsOfYear } from './yearFacts.ts';

const months: ClimateMonth[] = Array.from({ length: 12 }, (_, i) => ({
  month: i + 1,
  mean: 8 - 12 * Math.cos((2 * Math.PI * i) / 12),
  dailyRange: 9 + (i % 3),
  relativeHumidity: 0.6 + 0.02 * i,
  wind: 4,
  clearness: 0.4 + 0.015 * i,
  sun: 0,
}));
const place = { latitude: 45, longitude: 0, elevation: 100, timeZone: 0 };

describe('a year made from twelve months', () => {
  it.each([1, 2, 3])('gives back the months it was made from, seed %i', (seed) => {
    const back = monthsOfYear(syntheticYear(months, place, seed));
    back.forEach((m, i) => {
      const given = months[i];
      expect(Math.abs(m.mean - (given?.mean ?? 0))).toBeLessThan(0.1);
      expect(Math.abs(m.dailyRange - (given?.dailyRange ?? 0))).toBeLessThan(0.5);
      expect(Math.abs(m.clearness - (given?.clearness ?? 0))).toBeLessThan(0.01);
      expect(Math.abs(m.relativeHumidity - (given?.relativeHumidity ?? 0))).toBeLessThan(0.02);
      expect(Math.abs(m.wind - (given?.wind ?? 0))).toBeLessThan(0.01);
    });
  });

  it('is the same for the same seed and another for another', () => {
    expect(syntheticYear(months, place, 7)).toEqual(syntheticYear(months, place, 7));
    expect(syntheticYear(months, place, 7).dryBulb).not.toEqual(syntheticYear(months, place, 8).dryBulb);
  });

  it.each([
    ['the polar circle', 78],
    ['south of the equator', -40],
    ['the equator', 0],
  ])('has no number that is none, and light only while the sun is up: %s', (_name, latitude) => {
    const year = syntheticYear(months, { ...place, latitude }, 1);
    for (const column of [
      year.dryBulb,
      year.dewPoint,
      year.relativeHumidity,
      year.windSpeed,
      year.ghi,
      year.dni,
      year.dhi,
    ]) {
      expect(column.length).toBe(8760);
      expect(column.every(Number.isFinite)).toBe(true);
    }
    expect(year.relativeHumidity.every((rh) => rh > 0 && rh <= 1)).toBe(true);
    expect(year.ghi.every((x) => x >= 0)).toBe(true);
    expect(Math.max(...year.ghi.filter((_, i) => i % 24 === 0 && Math.abs(latitude) < 60))).toBeLessThanOrEqual(0);
    // Every hour's light adds up: direct on the level and from the sky.
    if (latitude === 78) expect(year.ghi.subarray(0, 24 * 30).every((x) => x === 0)).toBe(true);
  });

  // Marsaglia 2003: the sequence that begins at his seed.
  it('draws as published', () => {
    const [a, b, c] = [xorshift(2463534242), xorshift(xorshift(2463534242)), xorshift(xorshift(xorshift(2463534242)))];
    expect([a, b, c]).toEqual([723471715, 2497366906, 2064144800]);
  });

  // Tables of the normal distribution.
  it('knows the normal distribution', () => {
    for (const [z, share] of [
      [0, 0.5],
      [1, 0.8413447],
      [-1.96, 0.0249979],
      [2.326348, 0.99],
    ] as const)
      expect(Math.abs(normalShare(z) - share)).toBeLessThan(1e-6);
    const chance = chanceOf(0);
    const draws = Array.from({ length: 20_000 }, () => chance.normal());
    expect(Math.abs(draws.reduce((x, y) => x + y, 0) / 20_000)).toBeLessThan(0.03);
    expect(Math.abs(draws.reduce((x, y) => x + y * y, 0) / 20_000 - 1)).toBeLessThan(0.04);
  });
});
