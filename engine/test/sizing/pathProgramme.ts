import type { SizingSpec } from '../../src/air/sizing/spec.ts';

/**
 * The same task as an integer programme: one of each section's options (0 or 1, summing to 1), least cost, and one
 * inequality for every pair of a supply way and a return way. Solved by branch and bound on those inequalities, without
 * fronts and without the tree. Gives the least whole cost, Infinity where nothing fits, and nodes visited.
 */
export function pathProgramme(spec: SizingSpec, nodesMost: number): { cost: number; nodes: number; done: boolean } {
  const rows = pathRows(spec);
  const columns = spec.sections.map((s) =>
    s.options
      .filter((o) => s.fixed || (o.breaks ?? []).length === 0)
      .map((o) => ({
        loss: Math.round(o.loss * 1e6),
        cost: spec.goal === 'labour' ? Math.round(o.labour) : Math.round(o.money * 100),
      }))
      .sort((a, b) => a.cost - b.cost),
  );
  const n = columns.length;
  const on = spec.sections.map((_, i) => rows.flatMap((r, k) => (r.of.has(i) ? [k] : [])));
  const leastLoss = columns.map((list) => Math.min(...list.map((o) => o.loss)));
  const leastCost = columns.map((list) => list[0]?.cost ?? Number.POSITIVE_INFINITY);
  // What is left of each row when all open sections take their least.
  const slack = rows.map((r) => r.most - [...r.of].reduce((a, i) => a + (leastLoss[i] ?? 0), 0));
  let best = Number.POSITIVE_INFINITY;
  let nodes = 0;
  const order = spec.sections.map((_, i) => i).sort((a, b) => (on[b]?.length ?? 0) - (on[a]?.length ?? 0) || a - b);
  const room = (i: number) => Math.min(...(on[i] ?? []).map((k) => slack[k] ?? 0));
  const boundFrom = (depth: number, sum: number): number => {
    let bound = sum;
    for (let d = depth; d < n; d++) {
      const i = order[d] ?? 0;
      const free = room(i);
      bound += columns[i]?.find((o) => o.loss - (leastLoss[i] ?? 0) <= free)?.cost ?? leastCost[i] ?? 0;
    }
    return bound;
  };
  const visit = (depth: number, sum: number): void => {
    if (nodes++ > nodesMost || boundFrom(depth, sum) >= best) return;
    if (depth === n) {
      best = sum;
      return;
    }
    const i = order[depth] ?? 0;
    const free = room(i);
    for (const o of columns[i] ?? []) {
      const extra = o.loss - (leastLoss[i] ?? 0);
      if (extra > free) continue;
      for (const k of on[i] ?? []) slack[k] = (slack[k] ?? 0) - extra;
      visit(depth + 1, sum + o.cost);
      for (const k of on[i] ?? []) slack[k] = (slack[k] ?? 0) + extra;
    }
  };
  if (slack.every((x) => x >= 0) && columns.every((list) => list.length > 0)) visit(0, 0);
  return { cost: best, nodes, done: nodes <= nodesMost };
}

export type PathRow = { readonly of: ReadonlySet<number>; readonly most: number };

/** The sections of every pair of a supply way and a return way, and the µPa they may lose together. */
export function pathRows(spec: SizingSpec): PathRow[] {
  const { sections } = spec;
  const sideWays = (side: 'supply' | 'return') => {
    const list = sections.flatMap((s, i) =>
      s.side === side ? [{ of: wayTo(spec, i), end: Math.round(s.end * 1e6) }] : [],
    );
    return list.length > 0 ? list : [{ of: [], end: 0 }];
  };
  return sideWays('supply').flatMap((a) =>
    sideWays('return').map((b) => ({
      of: new Set([...a.of, ...b.of]),
      most: Math.round(spec.budget * 1e6) - a.end - b.end,
    })),
  );
}

function wayTo(spec: SizingSpec, i: number): number[] {
  const from = spec.sections[i]?.from;
  const parent = spec.sections.findIndex((s) => s.id === from);
  return parent < 0 ? [i] : [...wayTo(spec, parent), i];
}
