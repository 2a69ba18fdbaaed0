import { clearance, type Obstacles, type Piece } from '../../physics/passage/index.ts';

/** How finely a path is looked through, m of movement of the piece's corners. */
const step = 0.01;

/**
 * Where along a path a piece has least room, to 10 mm of its movement: x, y, turn, share of the path, clearance. Only poses
 * count whose lowest and highest point do: what merely rests or slides on a floor is not tight.
 */
export function tightestOn(
  o: Obstacles,
  { a, b }: Piece,
  path: readonly number[],
  counts: (low: number, high: number) => boolean = () => true,
): readonly [number, number, number, number, number] {
  const reach = Math.hypot(a, b);
  const at = (i: number): readonly [number, number, number] => [path[i] ?? 0, path[i + 1] ?? 0, path[i + 2] ?? 0];
  const legs: number[] = [];
  for (let i = 0; i + 5 < path.length; i += 3) {
    const [x, y, t] = at(i);
    const [u, v, w] = at(i + 3);
    legs.push(Math.hypot(u - x, v - y) + reach * Math.abs(w - t));
  }
  const whole = legs.reduce((n, l) => n + l, 0) || 1;
  let best: readonly [number, number, number, number, number] = [...at(0), 0, Number.POSITIVE_INFINITY];
  let gone = 0;
  for (const [k, leg] of legs.entries()) {
    const [x, y, t] = at(3 * k);
    const [u, v, w] = at(3 * k + 3);
    const steps = Math.max(1, Math.ceil(leg / step));
    for (let n = 0; n <= steps; n++) {
      const f = n / steps;
      const [px, py, turn] = [x + f * (u - x), y + f * (v - y), t + f * (w - t)];
      const tall = a * Math.abs(Math.sin(turn)) + b * Math.abs(Math.cos(turn));
      if (!counts(py - tall, py + tall)) continue;
      const gap = clearance(o, px, py, Math.cos(turn), Math.sin(turn), a, b);
      if (gap < best[4]) best = [px, py, turn, (gone + f * leg) / whole, gap];
    }
    gone += leg;
  }
  return best;
}
