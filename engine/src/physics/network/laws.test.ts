import { describe, expect, it } from 'vitest';
import { frictionFactor } from '../flow/friction.ts';
import { compileNetwork, type NetworkLink, solveNetwork } from './index.ts';
import { look } from './look.kernel.ts';
import { passage } from './memory.ts';
import { begin, iterate, step } from './solve.kernel.ts';

const duct: NetworkLink = {
  id: 'x',
  kind: 'duct',
  from: 'a',
  to: 'b',
  length: 7,
  diameter: 0.2,
  area: Math.PI * 0.01,
  roughness: 0.0009,
  factor: 1.5,
  loss: 0.8,
  density: 1.2,
  viscosity: 1.8e-5,
};
const links: NetworkLink[] = [
  duct,
  { ...duct, roughness: 0, loss: 0 },
  { id: 'x', kind: 'power', from: 'a', to: 'b', coefficient: 900, exponent: 1.6 },
  { id: 'x', kind: 'one-way', from: 'a', to: 'b', coefficient: 900, exponent: 1.8, leak: 1e-4 },
  {
    id: 'x',
    kind: 'fan',
    from: 'a',
    to: 'b',
    points: [
      { flow: 0, pressure: 200 },
      { flow: 0.2, pressure: 150 },
      { flow: 0.7, pressure: 10 },
    ],
  },
];

/** Pressure lost and its growth with flow as the kernel has them, 1/√f let settle. */
function lawOf(link: NetworkLink) {
  const net = compileNetwork({
    nodes: [
      { id: 'a', pressure: 0 },
      { id: 'b', pressure: 0 },
    ],
    links: [link],
  });
  solveNetwork(net);
  const x = net.regions.passages;
  return (flow: number) => {
    net.memory[x + passage.flow] = flow;
    for (let i = 0; i < 5; i++) look(net);
    return { drop: -(net.memory[x + passage.miss] ?? 0), slope: 1 / (net.memory[x + passage.conductance] ?? 0) };
  };
}

describe('laws of links', () => {
  it.each(links.map((l, i) => [`${l.kind} ${i}`, l] as const))('%s: slope is what differences say', (_name, link) => {
    const law = lawOf(link);
    for (const flow of [-0.4, -0.05, -0.002, 1e-4, 0.0071, 0.0093, 0.013, 0.06, 0.3, 0.65]) {
      const h = Math.abs(flow) * 1e-5;
      const difference = (law(flow + h).drop - law(flow - h).drop) / (2 * h);
      expect(law(flow).slope / difference).toBeCloseTo(1, 6);
    }
  });

  it('never lose less pressure at more flow', () => {
    for (const link of links) {
      const law = lawOf(link);
      let before = Number.NEGATIVE_INFINITY;
      for (let q = -0.1; q < 0.1; q += 0.00013) {
        const { drop, slope } = law(q);
        expect(drop).toBeGreaterThan(before);
        expect(slope).toBeGreaterThan(0);
        before = drop;
      }
    }
  });

  it('follow Colebrook and White solved on its own', () => {
    const law = lawOf(duct);
    for (const re of [500, 2299, 2301, 3999, 4001, 2e4, 3e5, 4e6]) {
      const flow = (re * duct.viscosity * duct.area) / (duct.density * duct.diameter);
      const f = frictionFactor(re, duct.roughness / duct.diameter);
      const v = flow / duct.area;
      const drop = ((1.5 * f * duct.length) / duct.diameter + 0.8) * 0.5 * duct.density * v * v;
      expect(law(flow).drop / drop).toBeCloseTo(1, 12);
    }
  });
});

describe('a dead end', () => {
  it.each([500, 3000, 40_000])('loses at Re %s what the same duct does between two nodes', (re) => {
    const flow = (re * duct.viscosity * duct.area) / (duct.density * duct.diameter);
    const net = compileNetwork({
      nodes: [
        { id: 'a', pressure: 0 },
        { id: 'b', outflow: flow },
      ],
      links: [duct],
    });
    expect(-(solveNetwork(net).pressures[1] ?? 0) / lawOf(duct)(flow).drop).toBeCloseTo(1, 12);
  });
});

describe('the solver', () => {
  it('makes nothing while it runs', () => {
    const grid = Array.from(
      { length: 40 },
      (_, i): NetworkLink => ({
        ...duct,
        id: `${i}`,
        from: `n${i % 12}`,
        to: `n${(i * 5 + 1 + Math.floor(i / 12)) % 13}`,
      }),
    ).filter((l) => l.from !== l.to);
    const net = compileNetwork({
      nodes: Array.from({ length: 13 }, (_, i) =>
        i === 0 ? { id: 'n0', pressure: 50 } : { id: `n${i}`, outflow: 0.01 },
      ),
      links: grid,
    });
    const run = (times: number): void => {
      for (let i = 0; i < times; i++) {
        begin(net);
        step(net);
        look(net);
        iterate(net, 1e-9, 0, 20);
      }
    };
    run(3000);
    const before = process.memoryUsage().heapUsed;
    run(3000);
    expect((process.memoryUsage().heapUsed - before) / 3000).toBeLessThan(100);
  });
});
