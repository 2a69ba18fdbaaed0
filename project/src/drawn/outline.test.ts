import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { areaOfOutline, type Corner, crossingOf, usableArea } from './outline.ts';

const bow: Corner[] = [
  [0, 0],
  [2, 2],
  [2, 0],
  [0, 2],
];
const ell: Corner[] = [
  [0, 0],
  [4, 0],
  [4, 2],
  [1, 2],
  [1, 3],
  [0, 3],
];

describe('an outline', () => {
  it('holds the area of its shape, either way round and from any corner', () => {
    // An L of 4 by 2 and 1 by 1.
    const turned = (k: number) => [...ell.slice(k), ...ell.slice(0, k)];
    for (let k = 0; k < ell.length; k++) {
      expect(areaOfOutline(turned(k))).toBeCloseTo(9, 12);
      expect(areaOfOutline(turned(k).reverse())).toBeCloseTo(9, 12);
    }
  });

  it('holds half the lattice points of its edge and all inside, less one, where its corners are whole', () => {
    // Pick's theorem, on rectangles with a corner cut off.
    const whole = fc.record({ w: fc.integer({ min: 3, max: 20 }), h: fc.integer({ min: 3, max: 20 }) });
    fc.assert(
      fc.property(whole, ({ w, h }) => {
        const corners: Corner[] = [
          [0, 0],
          [w, 0],
          [w, h - 1],
          [w - 1, h],
          [0, h],
        ];
        let [inside, edge] = [0, 0];
        for (let x = 0; x <= w; x++)
          for (let y = 0; y <= h; y++) {
            if (x + y > w + h - 1) continue;
            if (x === 0 || y === 0 || x === w || y === h || x + y === w + h - 1) edge += 1;
            else inside += 1;
          }
        return Math.abs(areaOfOutline(corners) - (inside + edge / 2 - 1)) < 1e-9;
      }),
      { seed: 5, numRuns: 50 },
    );
  });

  it('that is crossed says which sides and where, and stands for no area', () => {
    expect(crossingOf(bow)).toEqual({ sides: [0, 2], at: [1, 1] });
    expect(usableArea(bow)).toBe(undefined);
  });

  const around = (radii: readonly number[]) =>
    radii.map((r, k): Corner => {
      const turn = (2 * Math.PI * k) / radii.length;
      return [r * Math.cos(turn), r * Math.sin(turn)];
    });

  it('of any star-shaped room is not crossed', () => {
    const radii = fc.array(fc.double({ min: 0.5, max: 5, noNaN: true }), { minLength: 3, maxLength: 12 });
    fc.assert(
      fc.property(radii, (all) => crossingOf(around(all)) === undefined),
      { seed: 9 },
    );
  });

  it('round a circle is crossed in every order but the one round', () => {
    // Corners in convex position have one simple polygon only: their hull.
    const order = fc.shuffledSubarray([0, 1, 2, 3, 4, 5, 6], { minLength: 7, maxLength: 7 });
    fc.assert(
      fc.property(order, (places) => {
        const steps = places.map((p, k) => (places[(k + 1) % 7] ?? 0) - p);
        const isRound = steps.every((d) => d === 1 || d === -6) || steps.every((d) => d === -1 || d === 6);
        const corners = around([3, 3, 3, 3, 3, 3, 3]);
        return (crossingOf(places.map((p) => corners[p] ?? [0, 0])) === undefined) === isRound;
      }),
      { seed: 9, numRuns: 300 },
    );
  });

  it('that touches itself counts as crossed: nobody can tell which part is the room', () => {
    const touching: Corner[] = [
      [0, 0],
      [4, 0],
      [4, 4],
      [2, 0],
      [0, 4],
    ];
    expect(crossingOf(touching)?.at).toEqual([2, 0]);
  });

  it.each([
    [[]],
    [[[0, 0]]],
    [
      [
        [0, 0],
        [1, 0],
      ],
    ],
    [
      [
        [0, 0],
        [1, 0],
        [2, 0],
      ],
    ],
  ] as unknown as [Corner[]][])('of too little stands for no area: %j', (corners) => {
    expect(usableArea(corners)).toBe(undefined);
  });
});
