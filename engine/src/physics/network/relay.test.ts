import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compileNetwork, type NetworkLink, type NetworkSpec, relay, solveNetwork } from './index.ts';

const nodes = ({ held, taken }: Sizes) => [
  { id: 'room', pressure: 0 },
  { id: 'outdoors', pressure: held },
  { id: 'supply' },
  { id: 'fork' },
  { id: 'a' },
  { id: 'b', outflow: 0.01 },
  { id: 'end' },
  { id: 'dead end', outflow: taken },
];
type Sizes = {
  readonly diameter: number;
  readonly resistance: number;
  readonly lift: number;
  readonly leave: number;
  readonly loop: number;
  readonly held: number;
  readonly taken: number;
};

function network(sizes: Sizes): NetworkSpec {
  const { diameter, resistance, lift, leave, loop } = sizes;
  const duct = (id: string, from: string, to: string, d: number): NetworkLink => ({
    id,
    kind: 'duct',
    from,
    to,
    length: 6,
    diameter: d,
    area: (Math.PI * d * d) / 4,
    roughness: 0.0009,
    loss: 1,
    density: 1.2,
    viscosity: 1.8e-5,
  });
  const power = (id: string, from: string, coefficient: number): NetworkLink => ({
    id,
    kind: 'power',
    from,
    to: 'room',
    coefficient,
    exponent: 1.8,
  });
  const points = [
    { flow: 0.1, pressure: lift + 60 },
    { flow: 0.5, pressure: lift - 50 },
  ];
  return {
    nodes: nodes(sizes),
    links: [
      { id: 'fan', kind: 'fan', from: 'room', to: 'supply', points },
      { ...duct('trunk', 'supply', 'fork', diameter), leave },
      duct('to a', 'fork', 'a', 0.15),
      power('register a', 'a', resistance),
      power('second a', 'a', 2 * resistance),
      duct('to b', 'fork', 'b', 0.12),
      // Around this loop shares do not cancel: with them the matrix is not symmetric.
      { ...duct('across', 'fork', 'end', 0.1), arrive: loop },
      { ...power('leak', 'b', 5e4), to: 'outdoors' },
      duct('and back', 'end', 'a', 0.1),
      duct('beyond', 'end', 'dead end', 0.1),
    ],
  };
}

const sizes = fc.record({
  diameter: fc.double({ min: 0.1, max: 0.4, noNaN: true }),
  resistance: fc.double({ min: 100, max: 9000, noNaN: true }),
  lift: fc.double({ min: 60, max: 200, noNaN: true }),
  leave: fc.constantFrom(1, 0.9),
  loop: fc.constantFrom(1, 0.95, 0.9),
  held: fc.constantFrom(0, -3, 5),
  taken: fc.constantFrom(0, 0.002, 0.004),
});

describe('a network laid out once', () => {
  it('gives the same answer to the bit as one laid out anew, whatever it served before', () => {
    fc.assert(
      fc.property(sizes, sizes, (first, second) => {
        const [before, now] = [network(first), network(second)];
        const used = compileNetwork(before);
        solveNetwork(used);
        const again = solveNetwork(relay(used, before, now));
        expect(again).toEqual(solveNetwork(compileNetwork(now)));
        return again.converged;
      }),
      { seed: 20261125, numRuns: 300 },
    );
  });

  it('says what is wrong with a size that became impossible, and works again when it is mended', () => {
    const good = network({ diameter: 0.3, resistance: 900, lift: 100, leave: 1, loop: 1, held: 0, taken: 0.002 });
    const bad = network({ diameter: 0, resistance: 900, lift: 100, leave: 1, loop: 1, held: 0, taken: 0.002 });
    const broken = relay(compileNetwork(good), good, bad);
    expect(broken.problems[0]).toMatchObject({ code: 'value', id: 'trunk', field: 'diameter', found: 0 });
    expect(solveNetwork(broken).converged).toBe(false);
    expect(solveNetwork(relay(broken, bad, good)).converged).toBe(true);
  });
});
