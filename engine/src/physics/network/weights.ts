import type { Reduced } from './passages.ts';
import type { Shares } from './shares.ts';

/** A tree of passages over the unknown pressures, and what it leaves out. It hangs on what is joined alone. */
export type Tree = {
  /** Four for each step away from a root: passage, node known, node reached, 1 where the passage leads there. */
  readonly steps: Int32Array;
  /** Three for each passage between two unknown pressures: itself, nodes `from` and `to`. */
  readonly inner: Int32Array;
  readonly nodes: number;
};

export function treeOf({ passages, kept }: Reduced, nodes: number): Tree {
  const touching = new Map(kept.map((v) => [v, [] as number[]]));
  const inner: number[] = [];
  passages.forEach(({ from, to }, p) => {
    const [a, b] = [touching.get(from), touching.get(to)];
    if (!a || !b) return;
    inner.push(p, from, to);
    a.push(p);
    b.push(p);
  });
  const steps: number[] = [];
  const seen = new Set<number>();
  for (const root of kept) {
    const open = seen.has(root) ? [] : [root];
    seen.add(root);
    for (let v = open.pop(); v !== undefined; v = open.pop())
      for (const p of touching.get(v) ?? []) {
        const { from = v, to = v } = passages[p] ?? {};
        const other = from === v ? to : from;
        if (seen.has(other)) continue;
        seen.add(other);
        steps.push(p, v, other, from === v ? 1 : 0);
        open.push(other);
      }
  }
  return { steps: Int32Array.from(steps), inner: Int32Array.from(inner), nodes };
}

/**
 * Where air leaks out of a passage, its two rows see different flows, and the matrix is not symmetric. Weights carried
 * along a tree of passages mend that; whether they mend the loops too is looked up. By node.
 */
export function weigh(
  { steps, inner, nodes }: Tree,
  { leave, arrive }: Shares,
): { weight: Float64Array; symmetric: boolean } {
  const weight = new Float64Array(nodes).fill(1);
  if (leave.every((x, p) => x === arrive[p])) return { weight, symmetric: true };
  for (let i = 0; i < steps.length; i += 4) {
    const [gives, gets] = [leave[steps[i] ?? 0] ?? 1, arrive[steps[i] ?? 0] ?? 1];
    const grows = steps[i + 3] === 1 ? gives / gets : gets / gives;
    weight[steps[i + 2] ?? 0] = (weight[steps[i + 1] ?? 0] ?? 1) * grows;
  }
  for (let i = 0; i < inner.length; i += 3) {
    const p = inner[i] ?? 0;
    const [a, b] = [
      (leave[p] ?? 1) * (weight[inner[i + 1] ?? 0] ?? 1),
      (arrive[p] ?? 1) * (weight[inner[i + 2] ?? 0] ?? 1),
    ];
    // Written so that what is not a number is not alike.
    if (!(Math.abs(a - b) <= 1e-14 * a)) return { weight, symmetric: false };
  }
  return { weight, symmetric: true };
}
