import fc from 'fast-check';
import { Matrix, solve } from 'ml-matrix';
import { expect, it } from 'vitest';
import { type ZoneOrder, zoneOrder } from './zoneOrder.ts';
import { factorZones, solveZones } from './zones.kernel.ts';

/** A balance of zones of which some pairs meet: what is lost to the open makes its diagonal the larger. */
const balances = fc.integer({ min: 1, max: 9 }).chain((zones) =>
  fc.record({
    zones: fc.constant(zones),
    pairs: fc.array(fc.tuple(fc.nat(zones - 1), fc.nat(zones - 1)), { maxLength: 14 }),
    given: fc.array(fc.double({ min: -50, max: 50, noNaN: true }), { minLength: 2 * zones, maxLength: 2 * zones }),
    watts: fc.array(fc.double({ min: 0.1, max: 40, noNaN: true }), { minLength: 4, maxLength: 4 }),
  }),
);

/** A whole matrix as the blocks of zones that meet. */
function inBlocks(m: Float64Array, zones: number, { block, size }: ZoneOrder): Float64Array {
  const blocks = new Float64Array(size);
  for (let pair = 0; pair < zones * zones; pair++) {
    const at = block[pair] ?? -1;
    const corner = 4 * zones * Math.floor(pair / zones) + 2 * (pair % zones);
    for (let k = 0; k < 4 && at >= 0; k++) blocks[at + k] = m[corner + 2 * zones * (k >> 1) + (k & 1)] ?? Number.NaN;
  }
  return blocks;
}

it('finds the temperatures that a dense solver of a general library finds, whoever meets whom', () => {
  fc.assert(
    fc.property(balances, ({ zones, pairs, given, watts }) => {
      const n = 2 * zones;
      const m = new Float64Array(n * n);
      const add = (i: number, j: number, w: number): void => {
        m[i * n + j] = (m[i * n + j] ?? 0) - w;
        m[i * n + i] = (m[i * n + i] ?? 0) + w;
      };
      for (let v = 0; v < n; v++) m[v * n + v] = 3;
      for (let z = 0; z < zones; z++) add(2 * z, 2 * z + 1, 2);
      for (const [a, b] of pairs)
        if (a !== b) for (let k = 0; k < 4; k++) add(2 * a + (k >> 1), 2 * b + (k & 1), watts[k] ?? 1);
      const rows = Array.from({ length: n }, (_, i) => [...m.slice(i * n, i * n + n)]);
      const expected = solve(new Matrix(rows), Matrix.columnVector(given)).to1DArray();
      const order = zoneOrder(zones, pairs);
      const x = Float64Array.from(given.flatMap((g) => [g, 0]));
      const blocks = inBlocks(m, zones, order);
      factorZones(blocks, order);
      solveZones(blocks, order, x, 2);
      for (const [i, t] of expected.entries()) expect(Math.abs((x[2 * i] ?? Number.NaN) - t)).toBeLessThan(1e-9);
      for (const [i] of expected.entries()) expect(x[2 * i + 1]).toBeCloseTo(0, 12);
    }),
  );
});

it('takes rooms out before the hall and the attic they meet in, so that they never meet', () => {
  const rooms = [0, 1, 3, 4];
  const order = zoneOrder(6, [...rooms.map((r) => [r, 2] as const), ...rooms.map((r) => [5, r] as const), [2, 5]]);
  expect([...order.own.slice(0, 3)].map((node) => node / 2)).toEqual([0, 1, 3]);
  expect(order.node.length).toBe(4 * 2 + 1);
});
