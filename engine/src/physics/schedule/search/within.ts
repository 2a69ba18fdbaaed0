import { forget } from './clauses.kernel.ts';
import type { Search } from './state.ts';
import { chooseNext, draw, learnFromClash } from './step.kernel.ts';
import { backTo, choose } from './trail.kernel.ts';

/** `none`: proved that no plan ends by then; `open`: the count of contradictions allowed was used up. */
export type Within = { readonly found: 'none' | 'open' } | { readonly found: 'plan'; readonly starts: Int32Array };

const restartUnit = 64;

/** The sequence 1 1 2 1 1 2 4 ... by which searches start again. Luby, Sinclair and Zuckerman 1993. */
function luby(i: number): number {
  let size = 1;
  while (size < i + 1) size = 2 * size + 1;
  let at = i;
  while (size - 1 !== at) {
    size = (size - 1) >> 1;
    at %= size;
  }
  return (size + 1) >> 1;
}

/** Is there a plan that ends by `by`? At most `limit` more contradictions; what was learned stays in the search. */
export function planWithin(s: Search, by: number, limit: number): Within {
  const stop = s.conflicts + limit;
  const end = s.w.n - 1;
  backTo(s, 0);
  for (let i = 0; i <= end; i++) if ((s.bound[2 * i] ?? 0) > -(s.bound[2 * i + 1] ?? 0)) return { found: 'none' };
  for (let run = 0; ; run++) {
    const pause = Math.min(stop, s.conflicts + restartUnit * luby(run));
    while (s.conflicts < pause || s.level <= 1) {
      if (!draw(s)) {
        if (!learnFromClash(s)) return { found: 'none' };
      } else if (s.level === 0) {
        if ((s.bound[2 * end] ?? 0) > by) return { found: 'none' };
        choose(s, 2 * end + 1, Math.max(-by, s.bound[2 * end + 1] ?? 0));
      } else if (!chooseNext(s)) {
        const starts = Int32Array.from({ length: s.w.n }, (_, i) => s.bound[2 * i] ?? 0);
        backTo(s, 0);
        return { found: 'plan', starts };
      } else if (s.conflicts >= stop) break;
    }
    backTo(s, 0);
    if (s.conflicts >= stop) return { found: 'open' };
    if (!draw(s)) return { found: 'none' };
    if (s.clauses.count > 3000 + s.conflicts / 8) forget(s, forgetAbove(s));
  }
}

/** The number of levels that about half of the clauses stay below. */
function forgetAbove(s: Search): number {
  const { arena, top } = s.clauses;
  const counts = new Map<number, number>();
  let all = 0;
  for (let at = 0; at < top; at += 2 + 2 * (arena[at] ?? 0)) {
    const levels = arena[at + 1] ?? 0;
    counts.set(levels, (counts.get(levels) ?? 0) + 1);
    all++;
  }
  let most = 2;
  let kept = counts.get(1) ?? 0;
  kept += counts.get(2) ?? 0;
  while (kept + (counts.get(most + 1) ?? 0) < all / 2) kept += counts.get(++most) ?? 0;
  return most;
}
