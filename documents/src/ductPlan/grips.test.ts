import { describe, expect, it } from 'vitest';
import { placeGrips } from './grips.ts';
import { squareAt } from './stretches.ts';

type Held = Parameters<typeof placeGrips>[0][number];

const across: Held = {
  id: 'a',
  way: [
    [0, 0],
    [100, 0],
  ],
  width: 20,
};
const only = (given = across, drawn: Parameters<typeof placeGrips>[1] = []) => {
  const [grip] = placeGrips([given], drawn, 8);
  if (!grip) throw new Error('no grip');
  return grip;
};

describe('where a duct is taken hold of', () => {
  it('is on its wall, and outward is square to the way', () => {
    const { at, out } = only();
    expect(Math.abs(at[1])).toBeCloseTo(10, 12);
    expect(at[0]).toBeGreaterThan(0);
    expect(at[0]).toBeLessThan(100);
    expect(out[0] * 100).toBeCloseTo(0, 12);
    expect(Math.hypot(...out)).toBeCloseTo(1, 12);
    expect(out[1] * at[1]).toBeGreaterThan(0);
  });

  it('changes sides where something stands beyond that wall', () => {
    const { out } = only();
    const beyond = { x: 0, y: out[1] > 0 ? 11 : -31, width: 100, height: 20 };
    expect(only(across, [beyond]).out[1]).toBe(-out[1]);
  });

  it('keeps clear of the grips of ducts beside it, slanting ones too', () => {
    const slanting = (y: number) => ({ id: `${y}`, way: [[0, y] as const, [200, y + 150] as const], width: 10 });
    const grips = placeGrips([slanting(0), slanting(14), slanting(28)], [], 8);
    const boxes = grips.map((g) => squareAt(g.at, 8));
    for (const [i, a] of boxes.entries())
      for (const b of boxes.slice(i + 1)) expect(Math.abs(a.x - b.x) >= 16 || Math.abs(a.y - b.y) >= 16).toBe(true);
  });

  it('stands beside a duct that runs straight up', () => {
    expect(only({ id: 'up', way: [[5, 5]], width: 20 }).at).toEqual([23, 5]);
  });
});
