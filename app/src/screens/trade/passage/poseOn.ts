/** Where the piece is: m and radians. */
export type Pose = { readonly x: number; readonly y: number; readonly turn: number };

/** The pose at a share of a path (x, y, turn one after the other), evenly by how far the piece's corners move. */
export function poseOn(path: readonly number[], reach: number, share: number): Pose {
  const at = (i: number): Pose => ({ x: path[3 * i] ?? 0, y: path[3 * i + 1] ?? 0, turn: path[3 * i + 2] ?? 0 });
  const last = Math.max(0, Math.floor(path.length / 3) - 1);
  const legs = Array.from({ length: last }, (_, i) => {
    const [p, q] = [at(i), at(i + 1)];
    return Math.hypot(q.x - p.x, q.y - p.y) + reach * Math.abs(q.turn - p.turn);
  });
  let left = Math.min(1, Math.max(0, share)) * legs.reduce((n, l) => n + l, 0);
  for (const [i, leg] of legs.entries()) {
    if (left <= leg && leg > 0) {
      const [p, q, f] = [at(i), at(i + 1), left / leg];
      return { x: p.x + f * (q.x - p.x), y: p.y + f * (q.y - p.y), turn: p.turn + f * (q.turn - p.turn) };
    }
    left -= leg;
  }
  return at(last);
}
