import { inOrder } from '@kneewall/project';
import type { Scenario } from '../../plan/scenario.ts';
import { type Ducts, fittingShape } from '../model.ts';
import type { Fitting } from './fittingLoss.ts';

/** By section, the fittings drawn into it. Ends the enclosing attempt where one has no kind or count. */
export const fittingsOf = (ducts: Ducts, s: Scenario): Record<string, readonly Fitting[]> =>
  Object.fromEntries(
    inOrder(ducts.sections).map(([id, x]) => [
      id,
      inOrder(x.fittings).map(([, f]) => ({ kind: s.choice(f.kind), count: s.of(f.count), shape: fittingShape(f, s) })),
    ]),
  );
