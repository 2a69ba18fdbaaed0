import type { AskedWay } from './asked.ts';
import { askedName, type PassageInputs } from './passageJob.ts';
import type { Planned } from './planned.ts';
import { planWay } from './planWay.ts';

/** Most answers kept from one run of the job to the next. */
const most = 400;
/** Answers by question, so that after one edit only what it touches is planned again. Equal questions have equal answers. */
const kept = new Map<string, Planned>();

function once(way: AskedWay): Planned {
  const name = askedName(way);
  const known = kept.get(name);
  if (known) return known;
  const planned = planWay(way);
  if (kept.size >= most) kept.clear();
  kept.set(name, planned);
  return planned;
}

/** Plans every piece through every passage that is asked; `tell` hears how many are done. */
export function planWays({ ways }: PassageInputs, tell: (done: number, total: number) => void): readonly Planned[] {
  return ways.map((way, i) => {
    const planned = once(way);
    tell(i + 1, ways.length);
    return planned;
  });
}
