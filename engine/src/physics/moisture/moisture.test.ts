import { describe, expect, it } from 'vitest';
import { dewPointMagnus, interstitial, saturationMagnus, type VapourMonth } from './index.ts';

const days = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
const climate = (indoor: number): VapourMonth[] =>
  days.map((n, m) => {
    const t = 8 - 12 * Math.cos((2 * Math.PI * m) / 12);
    return {
      days: n,
      inside: { t: 20, p: indoor * saturationMagnus(20) },
      outside: { t, p: 0.8 * saturationMagnus(t) },
    };
  });
const films = { inside: 0.13, outside: 0.04 };
/** Board, wool, and a skin that holds vapour up outside: wrong way round. */
const wrong = [
  { resistance: 0.06, sd: 0.1 },
  { resistance: 2.5, sd: 0.1 },
  { resistance: 0.1, sd: 2 },
];

describe('water inside a wall', () => {
  it('turns saturation round', () => {
    for (const t of [-20, -1, 0, 10, 35]) expect(dewPointMagnus(saturationMagnus(t))).toBeCloseTo(t, 9);
  });

  it('gathers in winter behind a tight outer skin and dries in summer', () => {
    const found = interstitial(wrong, films, climate(0.5));
    expect(found.most).toBeGreaterThan(50);
    expect(found.left).toBe(0);
    expect([9, 10, 11]).toContain(found.begins);
    expect(found.plane).toBeCloseTo(0.2, 9);
  });

  it('does not gather with the skin on the warm side', () => {
    expect(interstitial([...wrong].reverse(), films, climate(0.5))).toMatchObject({ most: 0, left: 0 });
  });

  it('gathers more in damper rooms', () => {
    const at = (rh: number) => interstitial(wrong, films, climate(rh)).most;
    expect(at(0.6)).toBeGreaterThan(at(0.5));
    expect(at(0.5)).toBeGreaterThan(at(0.4));
  });

  // Hand calculation of one month: two layers, one plane at saturation between them.
  it('gathers what flows in less what flows out, by hand', () => {
    const month = { days: 30, inside: { t: 20, p: 1400 }, outside: { t: -10, p: 210 } };
    const [warm, cold] = [
      { resistance: 0.2, sd: 0.5 },
      { resistance: 0.2, sd: 5 },
    ];
    const plane = 20 - (30 * (0.13 + 0.2)) / (0.13 + 0.2 + 0.2 + 0.04);
    const p = saturationMagnus(plane);
    const rate = 2e-10 * ((1400 - p) / 0.5 - (p - 210) / 5);
    const found = interstitial([warm, cold], films, [month]);
    expect(found.most / (1000 * rate * 30 * 86_400)).toBeCloseTo(1, 9);
  });

  it('finds the hull that a fine search finds', () => {
    // The lowest taut string below saturation: relaxed on a fine grid until it stands.
    const month = { days: 30, inside: { t: 20, p: 1900 }, outside: { t: -8, p: 280 } };
    const layers = [
      { resistance: 1, sd: 1 },
      { resistance: 1, sd: 1 },
    ];
    const n = 8;
    const total = 2 + 0.17;
    const top = Array.from({ length: n + 1 }, (_, k) => saturationMagnus(20 - (28 * (0.13 + (2 * k) / n)) / total));
    const p = top.map((x, k) => (k === 0 ? 1900 : k === n ? 280 : x));
    for (let turn = 0; turn < 20_000; turn++)
      for (let k = 1; k < n; k++) p[k] = Math.min(top[k] ?? 0, ((p[k - 1] ?? 0) + (p[k + 1] ?? 0)) / 2);
    const step = 2 / n;
    const into = (2e-10 * ((p[0] ?? 0) - (p[1] ?? 0))) / step - (2e-10 * ((p[n - 1] ?? 0) - (p[n] ?? 0))) / step;
    expect(interstitial(layers, films, [month]).most / (1000 * into * 30 * 86_400)).toBeCloseTo(1, 6);
  });
});
