import { inOrder } from '@kneewall/project';
import { type Scenario, scenario } from '../../plan/scenario.ts';
import { type Ducts, fittingShape } from '../model.ts';
import type { There } from '../there.ts';
import type { Fitting } from './fittingLoss.ts';

/** By section, the fittings drawn into it. Ends the enclosing attempt where one has no kind or count. */
export const fittingsOf = (ducts: Ducts, s: Scenario): Record<string, readonly Fitting[]> =>
  Object.fromEntries(
    inOrder(ducts.sections).map(([id, x]) => [
      id,
      inOrder(x.fittings).map(([, f]) => ({ kind: s.choice(f.kind), count: s.of(f.count), shape: fittingShape(f, s) })),
    ]),
  );

/** How many fittings of each kind are drawn on ducts that are to be made. */
export function fittingCounts(ducts: Ducts, { sections }: There): Record<string, number> {
  const counts: Record<string, number> = {};
  for (const [id, fittings] of Object.entries(fittingsOf(ducts, scenario())))
    for (const { kind, count } of id in sections ? [] : fittings) counts[kind] = (counts[kind] ?? 0) + count;
  return counts;
}
