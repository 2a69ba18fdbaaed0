/**
 * Steepest tilt from the vertical, radians, of a box `depth` m deep that straddles a slot `slot` m wide in a floor
 * `thickness` m thick: depth/cos + thickness tan = slot. Nothing where it does not go in upright. Source: `access.tilt`.
 */
export function steepestTilt(slot: number, depth: number, thickness: number): number | undefined {
  if (depth > slot) return undefined;
  let [low, high] = [0, Math.PI / 2];
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    // Times the cosine, which keeps it finite.
    if (depth + thickness * Math.sin(middle) <= slot * Math.cos(middle)) low = middle;
    else high = middle;
  }
  return low;
}

/** m that its top stands above the floor when a box comes out at that tilt. */
export const topAt = (length: number, depth: number, tilt: number): number =>
  length * Math.cos(tilt) + depth * Math.sin(tilt);

/**
 * m of free height over the floor that is surely enough to bring a box up through the slot and lay it down. Once it leans
 * further than its own diagonal it only gets lower; before that it has to pass over its diagonal. Enough, not needed: a
 * box may also turn while it comes up.
 */
export function heightToClear(length: number, depth: number, slot: number, thickness: number): number | undefined {
  const tilt = steepestTilt(slot, depth, thickness);
  if (tilt === undefined) return undefined;
  const diagonal = Math.hypot(length, depth);
  return tilt >= Math.atan2(depth, length) ? topAt(length, depth, tilt) : diagonal;
}
