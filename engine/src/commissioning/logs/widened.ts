import type { Interval } from '../../physics/fitting/index.ts';

/** An interval with a share of its middle added in quadrature. */
export function widened({ likely, low, high }: Interval, share: number): Interval {
  const by = (half: number): number => Math.hypot(half, share * likely);
  return { likely, low: likely - by(likely - low), high: likely + by(high - likely) };
}
