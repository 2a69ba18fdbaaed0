import type { WorkLayout } from '../layout.ts';
import { newSearch } from './state.ts';
import { planWithin } from './within.ts';

/** What exact search found. The end of all work lies between `bound` and that of `starts`; `proved`: they are one. */
export type Exact = {
  readonly starts: Int32Array;
  readonly bound: number;
  readonly proved: boolean;
  /** Contradictions met: the count that limits are stated in. */
  readonly conflicts: number;
};

/** Contradictions spent on one try before the other side gets its turn. */
const turn = 2000;

/**
 * The least end of all work by conflict-driven search with learned clauses (Schutt, Feydy, Stuckey and Wallace 2011): tries from
 * `lower` up, each end either impossible or found, and in turns for a plan better than the best known. `start` keeps all
 * deadlines. At most `limit` contradictions; never by the clock.
 */
export function searchExactly(w: WorkLayout, start: Int32Array, lower: number, limit: number): Exact {
  let starts = start;
  let bound = lower;
  const endOf = () => starts[w.n - 1] ?? 0;
  const search = newSearch(w, starts);
  const rest = () => limit - search.conflicts;
  for (let length = turn; bound < endOf() && rest() > 0; length *= 2) {
    // From below: whatever is not possible raises the bound.
    let open = false;
    while (!open && bound < endOf() && rest() > 0) {
      const found = planWithin(search, bound, Math.min(length, rest()));
      if (found.found === 'none') bound = Math.max(bound + 1, search.bound[2 * (w.n - 1)] ?? 0);
      else if (found.found === 'plan') starts = found.starts;
      else open = true;
    }
    while (bound < endOf() && rest() > 0) {
      const found = planWithin(search, endOf() - 1, Math.min(length, rest()));
      if (found.found === 'plan') {
        starts = found.starts;
        search.choice.lean.set(starts);
      } else {
        if (found.found === 'none') bound = endOf();
        break;
      }
    }
  }
  bound = Math.min(bound, endOf());
  return { starts, bound, proved: bound === endOf(), conflicts: search.conflicts };
}
