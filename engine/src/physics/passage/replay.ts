import { clearance } from './clearance.kernel.ts';
import type { Obstacles, Piece } from './obstacles.ts';

/** A path as x, y, turn one after the other: m, m, radians; between poses all three move evenly. */
export type Path = Float64Array;

/** m nearer than which a piece counts as touching: far below any tape, far above rounding. */
const touching = 1e-7;

/**
 * Least clearance on the straight move between two poses, m, or below 0 where it touches, by conservative advancement: no
 * point of the piece moves further than the move of its middle and the arc of its corner, so that from a pose with some
 * clearance nothing can touch before that much was moved.
 */
export function sweep(o: Obstacles, { a, b }: Piece, path: Path, at: number, to: number): number {
  const [x, y, t] = [path[at] as number, path[at + 1] as number, path[at + 2] as number];
  const [dx, dy, dt] = [(path[to] as number) - x, (path[to + 1] as number) - y, (path[to + 2] as number) - t];
  const moved = Math.hypot(dx, dy) + Math.hypot(a, b) * Math.abs(dt);
  let least = Number.POSITIVE_INFINITY;
  for (let done = 0; ; ) {
    const turn = t + done * dt;
    const gap = clearance(o, x + done * dx, y + done * dy, Math.cos(turn), Math.sin(turn), a, b);
    if (gap < touching) return Math.min(gap, 0) - touching;
    if (gap < least) least = gap;
    if (done >= 1) return least;
    done = moved > 0 ? Math.min(1, done + gap / moved) : 1;
  }
}

/** A path replayed: whether it holds all the way, its least clearance, and where. */
export type Replay = { readonly clear: boolean; readonly least: number; readonly at: number };

/** Replays a whole path exactly, pose to pose. `at` is the pose at or after which it is tightest, or where it touches. */
export function replay(o: Obstacles, piece: Piece, path: Path): Replay {
  let [least, at] = [Number.POSITIVE_INFINITY, 0];
  for (let i = 0; i + 3 < path.length; i += 3) {
    const gap = sweep(o, piece, path, i, i + 3);
    if (gap < 0) return { clear: false, least: gap, at: i / 3 };
    if (gap < least) [least, at] = [gap, i / 3];
  }
  return { clear: path.length >= 3 && path.every(Number.isFinite), least, at };
}

/** Takes poses out of a path as long as the straight move past them is clear by `keep` m: what is left is still certified. */
export function straighten(o: Obstacles, piece: Piece, path: Path, keep: number): Path {
  const count = path.length / 3;
  const kept = [0];
  for (let i = 0; i < count - 1; ) {
    let [step, best] = [1, i + 1];
    while (i + step < count) {
      if (step > 1 && !(sweep(o, piece, path, 3 * i, 3 * (i + step)) >= keep)) break;
      best = i + step;
      step *= 2;
    }
    for (step = Math.floor(step / 2); step >= 1; step = Math.floor(step / 2))
      if (best + step < count && sweep(o, piece, path, 3 * i, 3 * (best + step)) >= keep) best += step;
    kept.push(best);
    i = best;
  }
  return Float64Array.from(
    kept.flatMap((k) => [path[3 * k] as number, path[3 * k + 1] as number, path[3 * k + 2] as number]),
  );
}
