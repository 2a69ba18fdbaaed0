import type { UnitMoment } from '../season/unitPower.ts';

/** A piece of what heat takes: kWh of heat in an hour at most, kWh of electricity for each. */
export type HeatPiece = { readonly width: number; readonly slope: number };

/**
 * The lowest convex line under what a unit draws for its heat, strips beyond it; kW. Cycling below the lowest speed and
 * a speed that is worse than its neighbours lie above it, so that it says what heat costs at best.
 */
export function unitHull(moment: UnitMoment, strips: number): HeatPiece[] {
  const points = [{ capacity: 0, power: 0 }, ...moment].map((p) => ({ x: p.capacity / 1000, y: p.power / 1000 }));
  const hull: { x: number; y: number }[] = [];
  for (const p of points) {
    for (;;) {
      const [a, b] = [hull.at(-2), hull.at(-1)];
      if (!a || !b || (b.y - a.y) * (p.x - b.x) < (p.y - b.y) * (b.x - a.x)) break;
      hull.pop();
    }
    hull.push(p);
  }
  const pieces = hull.slice(1).map((p, i) => {
    const from = hull[i] ?? p;
    return { width: p.x - from.x, slope: (p.y - from.y) / (p.x - from.x) };
  });
  return strips > 0 ? [...pieces, { width: strips / 1000, slope: 1 }] : pieces;
}
