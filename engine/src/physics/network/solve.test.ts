import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  compileFan,
  compileNetwork,
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
    const links = [
      quadratic('12', '1', '2', 0.002),
      quadratic('13', '1', '3', 0.005),
      quadratic('23', '2', '3', 0.008),
      quadratic('24', '2', '4', 0.006),
      quadratic('34', '3', '4', 0.003),
    ];
    const { litres, pressures } = solve({
      nodes: [{ id: '1', outflow: -0.1 }, { id: '2' }, { id: '3' }, { id: '4', pressure: 0 }],
      links,
    });
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

/** A random tree of ducts with loops across it, a fan at its root, and rooms at its ends; all elements monotone. */
function randomNetwork(random: () => number): NetworkSpec {
  const n = 4 + Math.floor(random() * 20);
  const duct = (id: string, from: string, to: string): NetworkLink => {
    const diameter = 0.08 + 0.3 * random();
    return {
      id,
      kind: 'duct',
      from,
      to,
      length: 0.5 + 12 * random(),
      diameter,
      area: (Math.PI * diameter ** 2) / 4,
      roughness: 0.003 * random(),
      factor: 1 + 8 * random(),
      loss: 3 * random(),
      density: 0.8 + 0.5 * random(),
      viscosity: 1.8e-5,
    };
  };
  const tree = Array.from({ length: n }, (_, i) =>
    duct(`t${i}`, i === 0 ? 'fan' : `n${Math.floor(random() * i)}`, `n${i}`),
  );
  const across = Array.from(
    { length: Math.floor(n / 3) },
    (_, i) => [Math.floor(random() * n), Math.floor(random() * n), i] as const,
  )
    .filter(([a, b]) => a !== b)
    .map(([a, b, i]) => duct(`x${i}`, `n${a}`, `n${b}`));
  const ends = Array.from(
    { length: n },
    (_, i): NetworkLink => ({
      id: `e${i}`,
      kind: 'power',
      from: `n${i}`,
      to: 'room',
      coefficient: 10 ** (2 + 3 * random()),
      exponent: 1 + random(),
      ...(random() < 0.3 ? { leave: 1 - 0.2 * random() } : {}),
    }),
  );
  const fan: NetworkLink = {
    id: 'blower',
    kind: 'fan',
    from: 'room',
    to: 'fan',
    points: [
      { flow: 0.05, pressure: 300 + 100 * random() },
      { flow: 0.4, pressure: 150 },
      { flow: 0.9, pressure: 10 },
    ],
  };
  return {
    nodes: [{ id: 'room', pressure: 0 }, { id: 'fan' }, ...Array.from({ length: n }, (_, i) => ({ id: `n${i}` }))],
    links: [fan, ...tree, ...across, ...ends],
  };
}

describe('random networks of monotone elements', () => {
  it('settle from any start on one and the same answer, and keep the air', () => {
    fc.assert(
      fc.property(fc.infiniteStream(fc.double({ min: 0, max: 1, noNaN: true, maxExcluded: true })), (stream) => {
        const numbers = stream[Symbol.iterator]();
        const random = () => Number(numbers.next().value);
        const spec = randomNetwork(random);
        const usual = solve(spec);
        const start = Float64Array.from(usual.flows, () => (random() - 0.5) * 2);
        const other = solve(spec, start);
        expect(usual.converged && other.converged).toBe(true);
        expect(usual.imbalance).toBeLessThan(1e-9);
        const scale = Math.max(...usual.flows.map(Math.abs));
        usual.flows.forEach((q, i) => {
          expect(Math.abs(q - (other.flows[i] ?? 0)) / scale).toBeLessThan(1e-8);
        });
      }),
      { seed: 20261125, numRuns: 600 },
    );
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
});
