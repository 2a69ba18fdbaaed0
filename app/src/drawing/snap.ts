import type { System } from '@kneewall/project';
import type { Point, Spot } from './corners.ts';

/** m between the spots a dragged corner may stand at: 2 in, or 50 mm. */
export const gridStep: Readonly<Record<System, number>> = { us: 0.0508, si: 0.05 };

export type Guides = {
  readonly step: number;
  /** Ends of other things, which a corner takes over exactly. */
  readonly ends: readonly Point[];
  /** The corners before and after it: a corner near level or square with one stands exactly so. */
  readonly beside: readonly Point[];
  /** m within which an end draws a corner to itself. */
  readonly reach: number;
};

export type Snapped = { readonly spot: Spot; readonly end?: Point };

/** Where a corner dragged to a spot comes to stand: on an end within reach, else square with its neighbours or on the grid. */
export function snapped(spot: Spot, { step, ends, beside, reach }: Guides): Snapped {
  const far = (p: Point) => Math.hypot((p[0] ?? 0) - spot[0], (p[1] ?? 0) - spot[1]);
  const end = ends.reduce<Point | undefined>((best, p) => (far(p) < (best ? far(best) : reach) ? p : best), undefined);
  if (end) return { spot: [end[0] ?? 0, end[1] ?? 0], end };
  const along = (axis: 0 | 1): number => {
    const own = spot[axis];
    const level = beside.map((p) => p[axis] ?? 0).find((v) => Math.abs(v - own) <= step / 2);
    return level ?? Math.round(own / step) * step;
  };
  return { spot: [along(0), along(1)] };
}
