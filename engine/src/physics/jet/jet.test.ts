import { describe, expect, it } from 'vitest';
import { archimedes, besideMiddle, dropAt, halfWidth, middleSpeed, reachDown, throwTo } from './index.ts';

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

  it('carries on what momentum it left with, summed over its whole profile, for a free jet’s usual K of 6.2 to 7', () => {
    // ρ V₀² A₀ = ρ ∫ V² 2πr dr over a Gaussian of half-width b: V² π b² / (2 ln 2).
    const [way, velocity, area] = [3, 2, 0.01];
    const kept = (k: number) => {
      let sum = 0;
      for (let r = 0.001; r < 2; r += 0.002)
        sum +=
          (middleSpeed(way, k, velocity, area) * besideMiddle(r, halfWidth(way, area))) ** 2 * 2 * Math.PI * r * 0.002;
      return sum / (velocity ** 2 * area);
    };
    expect(kept(6.2)).toBeLessThan(1);
    expect(kept(7)).toBeGreaterThan(1);
  });

  it('has slowed to the speed of its throw where its throw ends, and is never faster than it left', () => {
    expect(middleSpeed(throwTo(0.25, 5, 2, 0.02), 5, 2, 0.02)).toBeCloseTo(0.25, 14);
    expect(middleSpeed(0.01, 5, 2, 0.02)).toBe(2);
    expect(besideMiddle(0.3, 0.3)).toBeCloseTo(0.5, 14);
  });

  it('goes half as far to twice the speed', () => {
    expect(throwTo(0.5, 5, 2, 0.02)).toBeCloseTo(throwTo(0.25, 5, 2, 0.02) / 2, 14);
  });
});
