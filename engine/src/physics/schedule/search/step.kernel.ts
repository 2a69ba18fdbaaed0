import { analyse, levelsOfLearned } from './analyse.kernel.ts';
import { drawPair, drawStart } from './arcs.kernel.ts';
import { fadeWeights, heaviestOpen } from './choice.kernel.ts';
import { drawClauses, storeLearned } from './clauses.kernel.ts';
import { drawProfile } from './profile.kernel.ts';
import type { Search } from './state.ts';
import { backTo, choose, set } from './trail.kernel.ts';

/** Draws every consequence of what is set. False: a contradiction, in `clash`. */
export function draw(s: Search): boolean {
  const { trail, w } = s;
  let fine = true;
  while (fine && (s.drawn < trail.length || s.profile.count > 0)) {
    while (fine && s.drawn < trail.length) {
      const e = s.drawn++;
      const view = trail.view[e]!;
      fine = drawClauses(s, view, trail.old[e]!, trail.value[e]!);
      if (fine) fine = view < 2 * w.n ? drawStart(s, view) : drawPair(s, (view >> 1) - w.n);
    }
    if (fine) fine = drawProfile(s);
  }
  return fine;
}

/** Learns from the contradiction and goes back to where it says something new. False: there is no way out. */
export function learnFromClash(s: Search): boolean {
  s.conflicts++;
  const back = s.level === 0 ? -1 : analyse(s);
  if (back < 0) return false;
  fadeWeights(s);
  const { learned, learnedCount } = s.analysis;
  const levels = levelsOfLearned(s);
  backTo(s, back);
  s.whyCount = 0;
  return set(s, learned[0]!, learned[1]!, learnedCount === 1 ? -1 : storeLearned(s, levels));
}

/** Chooses something that is open: what had most part in contradictions, else the piece that can start first. False: all is set. */
export function chooseNext(s: Search): boolean {
  const { choice: c, w, pairs } = s;
  const id = heaviestOpen(s);
  if (id >= 0) {
    const x = c.variable[id]!;
    const v = c.value[id]!;
    const low = x < w.n ? c.lean[x]! <= v : c.lean[pairs.first[x - w.n]!]! > c.lean[pairs.second[x - w.n]!]!;
    if (low) choose(s, 2 * x + 1, -v);
    else choose(s, 2 * x, v + 1);
    return true;
  }
  let best = -1;
  for (let i = 0; i < w.n; i++) {
    const first = s.bound[2 * i]!;
    if (first === -s.bound[2 * i + 1]!) continue;
    if (
      best < 0 ||
      first < s.bound[2 * best]! ||
      (first === s.bound[2 * best]! && s.bound[2 * i + 1]! > s.bound[2 * best + 1]!)
    )
      best = i;
  }
  if (best < 0) return false;
  choose(s, 2 * best + 1, -s.bound[2 * best]!);
  return true;
}
