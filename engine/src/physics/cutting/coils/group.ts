/** Runs that are shared out exactly; sets of them are gone through. */
export const groupedMost = 14;

/** Coils that runs of that length take in a row: each but the first begins with a splice, which takes its sleeve. */
export const coilsFor = (length: number, coil: number, sleeve: number): number =>
  length <= coil ? 1 : Math.ceil((length - sleeve) / (coil - sleeve));

/**
 * Groups of runs, each laid in a row through coils of its own: the fewest coils in all, then the most groups, since a group
 * of n coils has at most n - 1 splices. Lengths whole, none longer than a coil.
 */
export function fewestSplices(lengths: readonly number[], coil: number, sleeve: number): number[][] {
  const sets = 2 ** lengths.length;
  const sum = new Float64Array(sets);
  const coils = new Int32Array(sets).fill(2 ** 30);
  const groups = new Int32Array(sets);
  const taken = new Int32Array(sets);
  coils[0] = 0;
  for (let set = 1; set < sets; set++) {
    const low = 31 - Math.clz32(set & -set);
    sum[set] = (sum[set & (set - 1)] ?? 0) + (lengths[low] ?? 0);
  }
  for (let set = 1; set < sets; set++) {
    const first = set & -set;
    // Every group that the first run of the set can be in.
    for (let group = set; group > 0; group = (group - 1) & set) {
      if (!(group & first)) continue;
      const rest = set ^ group;
      const n = coilsFor(sum[group] ?? 0, coil, sleeve) + (coils[rest] ?? 0);
      const g = 1 + (groups[rest] ?? 0);
      if (n > (coils[set] ?? 0) || (n === coils[set] && g <= (groups[set] ?? 0))) continue;
      coils[set] = n;
      groups[set] = g;
      taken[set] = group;
    }
  }
  const found: number[][] = [];
  for (let set = sets - 1; set > 0; set ^= taken[set] ?? set)
    found.push(lengths.flatMap((_, i) => ((taken[set] ?? 0) & (1 << i) ? [i] : [])));
  return found;
}
