/** Readings as numbers, row by row: what `fillCovariance` needs of them. */
export type RowNumbers = {
  readonly n: number;
  /** 1 for temperatures, whose errors are K and no shares. */
  readonly warm: Uint8Array;
  readonly channel: Int32Array;
  /** Rows of one method share its number. */
  readonly method: Int32Array;
  readonly base: Float64Array;
  readonly fixed: Float64Array;
  readonly random: Float64Array;
  readonly floor: Float64Array;
  readonly own: Float64Array;
  /** n × n: what the plan's doubts have in common. */
  readonly doubts: Float64Array;
};

/**
 * Lower triangle of the covariance of readings about `mean`: doubts of the plan, reach of half-known severities (`count`
 * rows of n in `reach`), the part of a method's error that all its readings share, what a place has of its own, and each
 * reading's scatter. `open` (a share, and K) is added for a cause that may move anything.
 */
export function fillCovariance(
  rows: RowNumbers,
  mean: Float64Array,
  reach: Float64Array,
  count: number,
  ratioMost: number,
  openShare: number,
  openKelvin: number,
  covariance: Float64Array,
): void {
  const { n, warm, channel, method, base, fixed, random, floor, own, doubts } = rows;
  for (let i = 0; i < n; i++) {
    const mi = mean[i] ?? 0;
    const bi = base[i] ?? 0;
    const hot = warm[i] === 1;
    const ri = hot || bi === 0 ? 1 : Math.min(ratioMost, Math.abs(mi / bi));
    for (let j = 0; j <= i; j++) {
      const mj = mean[j] ?? 0;
      const bj = base[j] ?? 0;
      const rj = warm[j] === 1 || bj === 0 ? 1 : Math.min(ratioMost, Math.abs(mj / bj));
      let sum = (doubts[i * n + j] ?? 0) * ri * rj;
      for (let k = 0; k < count; k++) sum += (reach[k * n + i] ?? 0) * (reach[k * n + j] ?? 0);
      if (method[i] === method[j] && warm[i] === warm[j]) sum += (fixed[i] ?? 0) ** 2 * (hot ? 1 : mi * mj);
      if (channel[i] === channel[j]) {
        const open = hot ? openKelvin : openShare;
        const scale = hot ? 1 : open > 0 ? Math.max(Math.abs(mi), Math.abs(bi)) : mi;
        sum += ((own[i] ?? 0) ** 2 + open * open) * scale * scale;
      }
      if (i === j) sum += ((random[i] ?? 0) * (hot ? 1 : mi)) ** 2 + (floor[i] ?? 0) ** 2;
      covariance[i * n + j] = sum;
    }
  }
}
