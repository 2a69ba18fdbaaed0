/** Of the way on which a map leads, after a look that found things worse: it may lead past the place on either side. */
const halfway = 0.5;

/**
 * Steps to where a map of a few numbers no longer moves them, for maps that all but contract by themselves. Gets a place
 * and where the map takes it, both in numbers of about one, and gives the place to look at next: Broyden's rule, which
 * begins by going where the map leads and learns from each look how the map answers, so that the digits that are right
 * soon grow with every look. A look that found things worse than the one before is forgotten with all that was learnt.
 * Source: C. G. Broyden, Mathematics of Computation 19 (1965) 577-593 (from memory).
 */
export function broyden(): (at: readonly number[], taken: readonly number[]) => number[] {
  let known: { readonly at: readonly number[]; readonly gap: readonly number[] } | undefined;
  let inverse: number[][] = [];
  return (at, taken) => {
    const gap = at.map((x, i) => (taken[i] ?? x) - x);
    if (known === undefined) inverse = plain(at.length, 1);
    else if (largest(gap) >= largest(known.gap)) inverse = plain(at.length, halfway);
    else learn(inverse, less(at, known.at), less(gap, known.gap));
    known = { at, gap };
    const step = times(inverse, gap);
    return at.map((x, i) => x + (step[i] ?? 0));
  };
}

/** The change of rank one after which the matrix takes the change of the gap, turned round, to the step that made it. */
function learn(inverse: number[][], step: readonly number[], change: readonly number[]): void {
  const met = times(inverse, change);
  const left = inverse.map((_, j) => step.reduce((a, s, i) => a + s * (inverse[i]?.[j] ?? 0), 0));
  const size = dot(step, met);
  if (size === 0) return;
  inverse.forEach((row, i) => {
    const off = ((step[i] ?? 0) + (met[i] ?? 0)) / size;
    for (let j = 0; j < row.length; j++) row[j] = (row[j] ?? 0) - off * (left[j] ?? 0);
  });
}

const plain = (n: number, share: number): number[][] =>
  Array.from({ length: n }, (_, i) => Array.from({ length: n }, (_, j) => (i === j ? share : 0)));

const largest = (x: readonly number[]): number => x.reduce((a, b) => Math.max(a, Math.abs(b)), 0);
const less = (a: readonly number[], b: readonly number[]): number[] => a.map((x, i) => x - (b[i] ?? 0));
const dot = (a: readonly number[], b: readonly number[]): number => a.reduce((sum, x, i) => sum + x * (b[i] ?? 0), 0);
const times = (m: readonly (readonly number[])[], x: readonly number[]): number[] => m.map((row) => dot(row, x));
