import type { Range } from '@kneewall/project';
import { fittingLoss, sagTurn } from '../physics/flow/index.ts';
import { unresolved } from '../plan/outcome.ts';
import type { Scenario } from '../plan/scenario.ts';
import { asGiven } from './asGiven.ts';

/**
 * How many bends of one diameter's radius each sag is worth: half a one where it hangs in a long easy curve, two where it
 * is kinked over a narrow saddle as well. No coefficient for sag alone is published. Source: `flow.flexible-sag`.
 */
const bendsOfSag: Range = { low: 0.5, likely: 1, high: 2 };

/**
 * Loss coefficient of all sags of a flexible run, on its own velocity: the turn between two hangers taken as that much of
 * a bend, once for each span. m; `path` is the section's. A sag so deep that no table covers its turn is named.
 */
export function sagLoss(path: string, sag: number, span: number, length: number, s: Scenario): number {
  if (!(sag > 0 && span > 0)) return 0;
  const turn = fittingLoss('bend-flexible', { angle: sagTurn(sag, span) });
  if (!turn.ok) return unresolved('out-of-range', `${path}.sag`);
  return (length / span) * turn.value * s.of(asGiven(`${path}.sag`, 'number', bendsOfSag));
}
