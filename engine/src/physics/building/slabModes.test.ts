import { describe, expect, it } from 'vitest';
import { slabModes, type WallLayer } from './index.ts';

const concrete: WallLayer = { thickness: 0.2, conductivity: 1.13, density: 1400, heat: 1000 };
const board: WallLayer = { thickness: 0.012, conductivity: 0.16, density: 950, heat: 840 };
const quilt: WallLayer = { thickness: 0.066, conductivity: 0.04, density: 12, heat: 840 };
const wall = [board, quilt, concrete];
const step = 900;

/** Runs a wall whose faces are held at given temperatures; mean W/m² into each face by step. */
function run(layers: readonly WallLayer[], faces: readonly (readonly [number, number])[]) {
  const m = slabModes(layers, step);
  const modes = new Float64Array(m.slow.length);
  let [p1, p2] = [0, 0];
  const held = () =>
    m.slow.reduce((a, s, k) => a + s.energy * (modes[k] ?? 0), m.fast.energy1 * p1 + m.fast.energy2 * p2);
  return faces.map(([t1, t2]) => {
    const before = held();
    let [h1, h2] = [-m.fast.near * p1 - m.fast.across * p2, -m.fast.far * p2 - m.fast.across * p1];
    m.slow.forEach((s, k) => {
      h1 -= s.q1 * (modes[k] ?? 0);
      h2 -= s.q2 * (modes[k] ?? 0);
      modes[k] = s.decay * (modes[k] ?? 0) + s.q1 * t1 + s.q2 * t2;
    });
    [p1, p2] = [t1, t2];
    const [into, other] = [m.near * t1 - m.across * t2 + h1, m.far * t2 - m.across * t1 + h2];
    return { into, other, stored: (held() - before) / step };
  });
}

describe('a wall over a step', () => {
  it('stores exactly what flows in', () => {
    const faces = Array.from({ length: 200 }, (_, i) => [20 + 7 * Math.sin(i), -5 * Math.cos(1.7 * i)] as const);
    for (const r of run(wall, faces)) expect(r.stored).toBeCloseTo(r.into + r.other, 9);
  });

  it('comes to the steady flow of its resistance', () => {
    const resistance = 0.012 / 0.16 + 0.066 / 0.04 + 0.2 / 1.13;
    const last = run(
      wall,
      Array.from({ length: 3000 }, () => [20, 0] as const),
    ).at(-1);
    expect(last?.into).toBeCloseTo(20 / resistance, 8);
    expect(last?.other).toBeCloseTo(-20 / resistance, 8);
  });

  // Carslaw & Jaeger: a half space whose face is raised by one degree takes up sqrt(4 k rho c t / pi) J/m² in time t.
  it('takes up heat after a step as a half space does while the other face does not know', () => {
    const flows = run(
      [concrete],
      Array.from({ length: 16 }, () => [1, 0] as const),
    );
    for (const hours of [0.25, 1, 2]) {
      const taken = flows.slice(0, hours * 4).reduce((a, f) => a + f.into * step, 0);
      const exact = Math.sqrt((4 * 1.13 * 1400 * 1000 * hours * 3600) / Math.PI);
      expect(taken / exact).toBeGreaterThan(0.99);
      expect(taken / exact).toBeLessThan(1.01);
    }
  });

  // ISO 13786: the heat transfer matrix of a homogeneous layer for a sine in time.
  it.each([
    [24, 0.003],
    [12, 0.007],
    [6, 0.016],
  ])('admits and passes on a sine of %i hours as the exact transmission matrix says, within %f', (hours, within) => {
    const steps = Math.round((hours * 3600) / step);
    const phase = (i: number) => (2 * Math.PI * (i + 0.5)) / steps;
    const flows = run(
      [concrete],
      Array.from({ length: steps * 30 }, (_, i) => [Math.cos(phase(i)), 0] as const),
    );
    const lastPeriod = flows.slice(-steps);
    const amplitude = (pick: (f: (typeof flows)[number]) => number) => {
      const re = lastPeriod.reduce((a, f, i) => a + pick(f) * Math.cos(phase(i)), 0);
      const im = lastPeriod.reduce((a, f, i) => a + pick(f) * Math.sin(phase(i)), 0);
      return (2 / steps) * Math.hypot(re, im);
    };
    const depth = Math.sqrt((1.13 * hours * 3600) / (Math.PI * 1400 * 1000));
    const xi = 0.2 / depth;
    // With the other face held still: admittance k(1+i)/δ · coth(ξ(1+i)), transmittance k(1+i)/δ / sinh(ξ(1+i)).
    const sinh2 = Math.sinh(xi) ** 2 + Math.sin(xi) ** 2;
    const cosh2 = Math.cosh(xi) ** 2 - Math.sin(xi) ** 2;
    const root = (1.13 * Math.SQRT2) / depth;
    expect(Math.abs(amplitude((f) => f.into) / (root * Math.sqrt(cosh2 / sinh2)) - 1)).toBeLessThan(within);
    expect(Math.abs(amplitude((f) => f.other) / (root / Math.sqrt(sinh2)) - 1)).toBeLessThan(within);
  });

  it.each([
    ['no thickness', { ...board, thickness: 0 }],
    ['a negative conductivity', { ...board, conductivity: -0.1 }],
    ['a resistance of nothing', { resistance: 0 }],
  ])('refuses a layer with %s', (_name, layer) => {
    expect(() => slabModes([layer], step)).toThrow(RangeError);
  });

  it('has no modes without mass, and a conductance', () => {
    const glass = slabModes([{ resistance: 0.5 }], step);
    expect(glass).toMatchObject({ near: 2, far: 2, across: 2, slow: [] });
  });
});
