import { bladeLosses } from '../../physics/flow/index.ts';
import { unresolved } from '../../plan/outcome.ts';
import { inTable } from '../flows.ts';
import type { AirFlows, AirModel } from '../result.ts';
import { type BalancedFlows, balanceFlows } from './balanceFlows.ts';
import { partsOf } from './parts.ts';
import type { DamperPlace } from './places.ts';
import type { Shares } from './sharesOf.ts';

/** `limited`: the blower's table ends before every room has its share. */
export type Within = BalancedFlows & { readonly limited: boolean };

const halvings = 12;

/**
 * Balances, or comes as near to it as the blower's table lets. Rooms short of their share while all dampers stand open
 * need more pressure, which the blower gives only at less air: where its table ends first, they are brought as far on
 * their way from what they get open to their share as it goes, all by the same part of it, and the others share the rest.
 * Ends the enclosing attempt where the flows do not settle, or the table is left on the first step.
 */
export function withinTable(bare: AirModel, places: readonly DamperPlace[], shares: Shares, open: AirFlows): Within {
  const least = bare.blower.points[0]?.flow ?? 0;
  const parts = partsOf(places, shares, open);
  const at = (step: number): BalancedFlows => {
    const found = balanceFlows(bare, places, onTheWay(shares, parts, step), bladeLosses);
    return found.converged ? found : unresolved('not-converged', 'routes.ducts');
  };
  const whole = at(1);
  if (whole.flows.flow >= least) return { ...whole, flows: inTable(whole.flows, bare), limited: false };
  let [from, to, best] = [0, 1, at(0)];
  inTable(best.flows, bare);
  for (let i = 0; i < halvings; i++) {
    const middle = (from + to) / 2;
    const found = at(middle);
    if (found.flows.flow < least) to = middle;
    else [from, best] = [middle, found];
  }
  return { ...best, limited: true };
}

/** Shares of which the short rooms get the part they have with open dampers and `step` of what they lack. */
function onTheWay(shares: Shares, parts: Shares, step: number): Shares {
  const entries = Object.entries(shares).map(([room, share]) => {
    const part = Math.min(1, parts[room] ?? 1);
    return { room, share, short: part < 1, wanted: share * (part + step * (1 - part)) };
  });
  const sum = (of: typeof entries, key: 'share' | 'wanted') => of.reduce((a, x) => a + x[key], 0);
  const [short, others] = [entries.filter((x) => x.short), entries.filter((x) => !x.short)];
  const left = (1 - sum(short, 'wanted')) / Math.max(sum(others, 'share'), 1e-9);
  return Object.fromEntries(entries.map((x) => [x.room, x.short ? x.wanted : x.share * left]));
}
