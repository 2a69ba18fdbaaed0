import { describe, expect, it } from 'vitest';
import { compileNetwork, type NetworkLink, type NetworkSpec, solveNetwork } from './index.ts';

/** A generator of fixed seed (Park and Miller): the same networks on every machine. */
function generator(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
}

function duct(id: string, from: string, to: string, random: () => number): NetworkLink {
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
    ...(random() < 0.2 ? { arrive: 1 - 0.2 * random() } : {}),
  };
}

function end(id: string, from: string, random: () => number): NetworkLink {
  const ends = { id, from, to: 'room', coefficient: 10 ** (2 + 3 * random()), exponent: 1 + random() };
  if (random() < 0.15) return { ...ends, kind: 'one-way', leak: 1e-6 + 1e-4 * random() };
  return { ...ends, kind: 'power', ...(random() < 0.3 ? { leave: 1 - 0.2 * random() } : {}) };
}

/** A random tree of ducts with loops across it, a fan at its root, dead ends that take air, and rooms at its ends. */
function randomNetwork(random: () => number): NetworkSpec {
  const n = 3 + Math.floor(random() * 14);
  const pick = () => `n${Math.floor(random() * n)}`;
  const tree = Array.from({ length: n }, (_, i) =>
    duct(`t${i}`, i === 0 ? 'fan' : `n${Math.floor(random() * i)}`, `n${i}`, random),
  );
  const across = Array.from({ length: Math.floor(random() * n) }, (_, i) => duct(`x${i}`, pick(), pick(), random));
  const ends = Array.from({ length: n }, (_, i) => (random() < 0.6 || i === 0 ? [end(`e${i}`, `n${i}`, random)] : []));
  const taken = () => (random() < 0.2 ? { outflow: 0.02 * (random() - 0.3) } : {});
  return {
    nodes: [
      { id: 'room', pressure: 0 },
      { id: 'fan' },
      ...Array.from({ length: n }, (_, i) => ({ id: `n${i}`, ...taken() })),
    ],
    links: [
      {
        id: 'blower',
        kind: 'fan',
        from: 'room',
        to: 'fan',
        points: [
          { flow: 0.05, pressure: 300 + 100 * random() },
          { flow: 0.4, pressure: 150 },
          { flow: 0.9, pressure: 10 },
        ],
      },
      ...tree,
      ...across.filter((l) => l.from !== l.to),
      ...ends.flat(),
    ],
  };
}

describe('10,000 random networks of elements that rise', () => {
  it('settle from several starts on one answer, to 1e-8, and keep the air to 1e-9', () => {
    const random = generator(20261125);
    const short: string[] = [];
    for (let run = 0; run < 10_000; run++) {
      const net = compileNetwork(randomNetwork(random));
      const usual = solveNetwork(net);
      const scale = Math.max(...usual.flows.map(Math.abs));
      if (!usual.converged || !(usual.imbalance < 1e-9)) short.push(`${run}: ${usual.miss} Pa, ${usual.imbalance}`);
      for (let again = 0; again < 2; again++) {
        const other = solveNetwork(
          net,
          usual.flows.map(() => (random() - 0.5) * 10 ** (2 * random() - 1)),
        );
        const apart = Math.max(...other.flows.map((q, i) => Math.abs(q - (usual.flows[i] ?? Number.NaN)))) / scale;
        if (!other.converged || !(apart < 1e-8)) short.push(`${run}, start ${again}: ${apart} apart`);
      }
    }
    expect(short).toEqual([]);
  });
});
