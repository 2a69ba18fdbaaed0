import { bladeLosses } from '../../physics/flow/index.ts';
import { unresolved } from '../../plan/outcome.ts';
import type { AirFlows, AirModel } from '../ductwork.ts';
import { inTable } from '../flows.ts';
import { type BalancedFlows, balanceFlows } from './balanceFlows.ts';
import { partsOf } from './parts.ts';
import type { DamperPlace } from './places.ts';
import type { Shares } from './sharesOf.ts';

/** `limited`: the blower's table ends before every room has its share. */
export type Within = BalancedFlows & { readonly limited: boolean };

const halvings = 14;
/** Rooms whose dampers all stand open, taken as one. No room has this name: ids have no blanks. */
const openRooms = 'open rooms';

/**
 * Balances, or comes as near to it as the blower's table lets: dampers cost pressure, which the blower gives only at less
 * air. Where its table ends first, rooms short of their share stand open and get what the pressure at that end brings
 * them; all others get equal parts of their shares. Ends the enclosing attempt where the flows do not settle, or the
 * blower leaves its table with every damper open.
 */
export function withinTable(bare: AirModel, places: readonly DamperPlace[], shares: Shares, open: AirFlows): Within {
  const least = bare.blower.points[0]?.flow ?? 0;
  const whole = balanceFlows(bare, places, shares, bladeLosses);
  if (!whole.converged) return unresolved('not-converged', 'routes.ducts');
  if (whole.flows.flow >= least) return { ...whole, flows: inTable(whole.flows, bare), limited: false };
  inTable(open, bare);
  const parts = partsOf(places, shares, open);
  const rooms = Object.keys(parts).sort((a, b) => (parts[a] ?? 0) - (parts[b] ?? 0) || (a < b ? -1 : 1));
  const found = atTheEnd({ bare, places, shares, parts }, rooms, least);
  return { ...(found ?? allOpen(rooms, open)), limited: true };
}

type Task = {
  readonly bare: AirModel;
  readonly places: readonly DamperPlace[];
  readonly shares: Shares;
  /** What each room gets of its share with every damper open. */
  readonly parts: Shares;
};

/**
 * Opens rooms one after the other, those first that get least. With these open, air given to the others takes air from
 * them and pressure from the blower, until another room is the hardest; up to there the flow at the blower only rises.
 * Undefined where no step is within the table. A step that does not settle counts as none.
 */
function atTheEnd(task: Task, rooms: readonly string[], least: number): BalancedFlows | undefined {
  const { shares, parts } = task;
  let held: string[] = [];
  // What those that stand open would get of all air with the blower below its table.
  let tooMuch = 0;
  for (const room of rooms) {
    const left = 1 - held.reduce((a, r) => a + (shares[r] ?? 0), 0);
    tooMuch += ((1 - tooMuch) * (shares[room] ?? 0)) / Math.max(left, 1e-12);
    held = [...held, room];
    const natural = held.reduce((a, r) => a + (shares[r] ?? 0) * (parts[r] ?? 0), 0);
    const open = held;
    const withOpen = (share: number) => balanceOpen(task, open, share);
    const hardest = (f: BalancedFlows) => f.converged && (f.losses[room] ?? 0) <= bladeLosses.open * (1 + 1e-6);
    const within = (f: BalancedFlows) => f.converged && f.flows.flow >= least;
    // From more air for those that stand open to as little as they get when all do.
    const peak = hardest(withOpen(natural)) ? natural : edge(tooMuch, natural, (share) => hardest(withOpen(share)));
    if (within(withOpen(peak))) return withOpen(edge(peak, tooMuch, (share) => within(withOpen(share))));
    tooMuch = peak;
  }
  return undefined;
}

/** Nothing to turn: the table hardly reaches past the flow with every damper open. */
const allOpen = (rooms: readonly string[], flows: AirFlows): BalancedFlows => ({
  converged: true,
  rounds: 0,
  miss: 0,
  losses: Object.fromEntries(rooms.map((room) => [room, bladeLosses.open])),
  beyond: [],
  flows,
});

/** The last point from `good` towards `bad` at which something still holds, by halves. */
function edge(good: number, bad: number, holds: (x: number) => boolean): number {
  let [from, to] = [good, bad];
  for (let i = 0; i < halvings; i++) {
    const middle = (from + to) / 2;
    if (holds(middle)) from = middle;
    else to = middle;
  }
  return from;
}

/** Balances with some rooms taken as one that is to get `share` of all air; the others get equal parts of theirs. */
function balanceOpen({ bare, places, shares }: Task, held: readonly string[], share: number): BalancedFlows {
  const merged = places.map((p) => (held.includes(p.room) ? { ...p, room: openRooms } : p));
  const others = Object.entries(shares).filter(([room]) => !held.includes(room));
  const sum = others.reduce((a, [, s]) => a + s, 0);
  const wanted = Object.fromEntries(others.map(([room, s]) => [room, (s * (1 - share)) / Math.max(sum, 1e-12)]));
  const { losses, ...found } = balanceFlows(bare, merged, { ...wanted, [openRooms]: share }, bladeLosses);
  const { [openRooms]: loss = bladeLosses.open, ...rest } = losses;
  return { ...found, losses: { ...rest, ...Object.fromEntries(held.map((room) => [room, loss])) } };
}
