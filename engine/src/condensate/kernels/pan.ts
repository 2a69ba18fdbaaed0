/** A pan's inner sides and depth, m. */
export type Pan = { readonly length: number; readonly width: number; readonly depth: number };

/**
 * m³ that a pan holds up to its lowest rim, when it lies out of level by `tilt` m for each m along its length.
 * Never below the wedge that is left when the higher end stays dry.
 */
export function panHolds({ length, width, depth }: Pan, tilt = 0): number {
  const reach = tilt > 0 ? Math.min(length, depth / tilt) : length;
  return width * (reach * depth - (tilt * reach * reach) / 2);
}

/** s until so much water fills it with its drain stopped; `water` in litres an hour. Infinite where none comes. */
export const timeToFill = (volume: number, water: number): number => (volume * 1000 * 3600) / water;
