import { describe, expect, it } from 'vitest';
import { archimedes, dropAt, reachDown, throwTo } from './index.ts';

const jet = { velocity: 2, area: 0.03, excess: 15, room: 20 };

describe('jets', () => {
  it('a warm jet blown down gets as far as momentum and buoyancy alone say: 1.85 M^¾ / B^½', () => {
    const momentum = jet.velocity ** 2 * jet.area;
    const buoyancy = (9.80665 * jet.excess * jet.velocity * jet.area) / 293.15;
    expect(reachDown(jet) / ((1.85 * momentum ** 0.75) / Math.sqrt(buoyancy))).toBeCloseTo(1, 2);
  });

  it('a cold jet falls about as far as its slowing middle does under its own weight', () => {
    // V = K V₀ √A/x and Δt = 0.8 K Δt₀ √A/x give y = 0.8/3K · g Δt₀/(T V₀² √A) · x³, with K 5.
    const [x, cold] = [4, { ...jet, excess: -10 }];
    const own = ((0.8 / 15) * 9.80665 * 10 * x ** 3) / (293.15 * 4 * Math.sqrt(jet.area));
    expect(dropAt(x, cold) / own).toBeGreaterThan(0.8);
    expect(dropAt(x, cold) / own).toBeLessThan(1.25);
    expect(dropAt(x, jet)).toBeLessThan(0);
  });

  it('turns with the sign of the temperature difference and not at all without one', () => {
    expect(archimedes({ ...jet, excess: -15 })).toBe(-archimedes(jet));
    expect(Math.abs(dropAt(3, { ...jet, excess: 0 }))).toBe(0);
  });

  it('goes half as far to twice the speed', () => {
    expect(throwTo(0.5, 5, 2, 0.02)).toBeCloseTo(throwTo(0.25, 5, 2, 0.02) / 2, 14);
  });
});
