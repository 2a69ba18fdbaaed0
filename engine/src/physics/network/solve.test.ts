import { describe, expect, it } from 'vitest';
import {
  compileFan,
  compileNetwork,
  fanPoints,
  fanPressure,
  type NetworkLink,
  type NetworkSpec,
  operatingPoints,
  solveNetwork,
} from './index.ts';

const quadratic = (id: string, from: string, to: string, coefficient: number): NetworkLink => ({
  id,
  kind: 'power',
  from,
  to,
  coefficient: coefficient * 1e6,
  exponent: 2,
});
const solve = (spec: NetworkSpec, start?: Float64Array) => {
  const net = compileNetwork(spec);
  const s = solveNetwork(net, start);
  return { ...s, litres: Object.fromEntries(net.linkIds.map((id, i) => [id, (s.flows[i] ?? 0) * 1000])) };
};

const bridge: NetworkSpec = {
  nodes: [{ id: '1', outflow: -0.1 }, { id: '2' }, { id: '3' }, { id: '4', pressure: 0 }],
  links: [
    quadratic('12', '1', '2', 0.002),
    quadratic('13', '1', '3', 0.005),
    quadratic('23', '2', '3', 0.008),
    quadratic('24', '2', '4', 0.006),
    quadratic('34', '3', '4', 0.003),
  ],
};

describe('hand cases with pressure = k Q², Pa and L/s (computed from closed forms)', () => {
  it('shares three parallel branches', () => {
    const links = [
      quadratic('a', 'in', 'out', 0.002),
      quadratic('b', 'in', 'out', 0.005),
      quadratic('c', 'in', 'out', 0.012),
    ];
    const { litres, pressures } = solve({
      nodes: [
        { id: 'in', outflow: -0.4 },
        { id: 'out', pressure: 0 },
      ],
      links,
    });
    expect(litres.a).toBeCloseTo(196.0108055, 5);
    expect(litres.b).toBeCloseTo(123.9681183, 5);
    expect(litres.c).toBeCloseTo(80.0210763, 5);
    expect(pressures[0]).toBeCloseTo(76.8404717, 5);
  });

  it('crosses a bridge', () => {
    const { litres, pressures } = solve(bridge);
    expect([litres['12'], litres['13'], litres['23'], litres['24'], litres['34']].map((q) => q?.toFixed(6))).toEqual([
      '58.466304',
      '41.533696',
      '14.952516',
      '43.513788',
      '56.486212',
    ]);
    expect(pressures[0]).toBeCloseTo(18.19731589, 6);
  });
});

describe('a network of several kinds, from hand arithmetic', () => {
  it('trunk, then two equal ways side by side (closed form)', () => {
    const { litres, pressures } = solve({
      nodes: [{ id: 'in', pressure: 100 }, { id: 'fork' }, { id: 'half' }, { id: 'out', pressure: 0 }],
      links: [
        quadratic('trunk', 'in', 'fork', 0.0004),
        quadratic('A', 'fork', 'out', 0.003),
        quadratic('B1', 'fork', 'half', 0.0012),
        quadratic('B2', 'half', 'out', 0.0018),
      ],
    });
    expect(litres.trunk).toBeCloseTo(294.8839123, 5);
    expect(litres.A).toBeCloseTo(147.4419562, 5);
    expect(litres.B2).toBeCloseTo(147.4419562, 5);
    expect(pressures[1]).toBeCloseTo(65.2173913, 6);
  });

  it('a fan in a ring that nothing else leaves, and a dead end', () => {
    const { litres, pressures, converged } = solve({
      nodes: [{ id: 'room', pressure: 5 }, { id: 'a' }, { id: 'b' }, { id: 'c' }, { id: 'end', outflow: 0.01 }],
      links: [
        {
          id: 'fan',
          kind: 'fan',
          from: 'a',
          to: 'b',
          points: [
            { flow: 0, pressure: 100 },
            { flow: 1, pressure: 0 },
          ],
        },
        quadratic('ring', 'b', 'c', 0.002),
        quadratic('back', 'c', 'a', 0.001),
        quadratic('feed', 'room', 'c', 0.01),
        quadratic('last', 'c', 'end', 0.05),
      ],
    });
    // 100 - 100 Q = 3000 Q², Q in m³/s.
    expect((litres.fan ?? 0) / 1000).toBeCloseTo((-100 + Math.sqrt(100 ** 2 + 4 * 3000 * 100)) / 6000, 10);
    expect(litres.last).toBeCloseTo(10, 10);
    expect(pressures[4]).toBeCloseTo(5 - 10_000 * 0.01 ** 2 - 50_000 * 0.01 ** 2, 9);
    expect(converged).toBe(true);
  });

  it('starts from its own answer and stays there', () => {
    const net = compileNetwork(bridge);
    const first = solveNetwork(net);
    const again = solveNetwork(net, first.flows);
    expect(again.iterations).toBeLessThanOrEqual(3);
    expect(solveNetwork(net)).toEqual(first);
  });
});

describe('a flap that opens one way', () => {
  const flap = (pressure: number) =>
    solve({
      nodes: [
        { id: 'in', pressure },
        { id: 'out', pressure: 0 },
      ],
      links: [{ id: 'flap', kind: 'one-way', from: 'in', to: 'out', coefficient: 1000, exponent: 2, leak: 1e-5 }],
    });

  it('passes its law and its leak when open, its leak alone when pressed shut', () => {
    expect((flap(10).flows[0] ?? 0) / (Math.sqrt(10 / 1000) + 1e-4)).toBeCloseTo(1, 9);
    expect((flap(-10).flows[0] ?? 0) / -1e-4).toBeCloseTo(1, 9);
    expect(flap(0).flows[0]).toBe(0);
  });

  it('opens without a jump: flow rises with pressure, and evenly', () => {
    const flows = Array.from({ length: 301 }, (_, i) => flap((i - 100) / 1000).flows[0] ?? 0);
    const rises = flows.slice(1).map((q, i) => q - (flows[i] ?? 0));
    expect(Math.min(...rises)).toBeGreaterThan(0);
    expect(Math.max(...rises)).toBeLessThan(2.5e-4);
  });
});

describe('a blower', () => {
  it('whose points fall falls everywhere between them, and meets its points', () => {
    const points = [
      { flow: 0.1, pressure: 200 },
      { flow: 0.2, pressure: 195 },
      { flow: 0.35, pressure: 90 },
      { flow: 0.5, pressure: 20 },
    ];
    const curve = compileFan(points);
    for (const p of points) expect(fanPressure(curve, p.flow)).toBeCloseTo(p.pressure, 9);
    for (let q = 0.1; q < 0.5; q += 0.001)
      expect(fanPressure(curve, q + 0.001)).toBeLessThanOrEqual(fanPressure(curve, q) + 1e-12);
  });

  it('with a hump shows every operating point', () => {
    const curve = compileFan([
      { flow: 0, pressure: 100 },
      { flow: 0.1, pressure: 70 },
      { flow: 0.2, pressure: 120 },
      { flow: 0.4, pressure: 0 },
    ]);
    expect(operatingPoints(curve, (q) => 80 + 20 * q).length).toBe(3);
  });

  it('with a hump in a network: every point of a dense scan, and which of them hold', () => {
    const points = [
      { flow: 0, pressure: 100 },
      { flow: 0.1, pressure: 70 },
      { flow: 0.2, pressure: 120 },
      { flow: 0.4, pressure: 0 },
    ];
    const spec: NetworkSpec = {
      nodes: [{ id: 'out', pressure: 80 }, { id: 'room', pressure: 0 }, { id: 'plenum' }],
      links: [
        { id: 'fan', kind: 'fan', from: 'room', to: 'plenum', points },
        { id: 'a', kind: 'power', from: 'plenum', to: 'out', coefficient: 40, exponent: 1 },
        { id: 'b', kind: 'power', from: 'plenum', to: 'out', coefficient: 40, exponent: 1 },
      ],
    };
    const found = fanPoints(spec, 'fan');
    const curve = compileFan(points);
    const dense = Array.from({ length: 40_000 }, (_, i) => i * 1e-5).filter((q) => {
      const miss = (x: number) => fanPressure(curve, x) - 80 - 20 * x;
      return miss(q) > 0 !== miss(q + 1e-5) > 0;
    });
    expect(found.length).toBe(dense.length);
    found.forEach((p, i) => {
      expect(Math.abs(p.flow - (dense[i] ?? 0) - 5e-6)).toBeLessThan(6e-6);
      expect(p.pressure).toBeCloseTo(80 + 20 * p.flow, 6);
    });
    expect(found.map((p) => p.steady)).toEqual([true, false, true]);
    const { flows, converged } = solveNetwork(compileNetwork(spec));
    expect(!converged || found.some((p) => Math.abs(p.flow - (flows[0] ?? 0)) < 1e-6)).toBe(true);
  });
});
