import type { AirModel } from '../../air/ductwork.ts';
import { byHand, type Ducts, isOpen, type State, type StateAt, setTo } from './setTo.ts';

/** Within which a room's air counts as right, as a part of its share. Source: `air.balance`. */
export const band = 0.1;
/** Dampers up to which every set is weighed; beyond, sets are tried one damper larger at a time. */
const allSetsMost = 12;
/** Rooms that stay keep what they get of each other's air, but for what trunks and leaks take: this far is tried. */
const looser = 1.15;
/** How many sets are solved before the search says that it has no better. */
const triedMost = 1500;

export type Fewest = { readonly state: State; readonly moved: readonly number[]; readonly tried: number };

type Limits = { readonly model: AirModel; readonly staticMost?: number };

/** Whether the blower can run there: within its table, the unit's static pressure kept or not raised, one damper open. */
export const allowed =
  ({ model, staticMost = Number.POSITIVE_INFINITY }: Limits, before: State) =>
  ({ flows, losses }: State): boolean =>
    flows.flow >= (model.blower.points[0]?.flow ?? 0) * (1 - 1e-9) &&
    flows.staticPressure <= Math.max(staticMost, before.flows.staticPressure * (1 + 1e-9)) &&
    losses.some(isOpen);

/**
 * The fewest dampers that bring every room within that part of its share, each set as a hand can; of sets alike in number that which
 * leaves the worst room nearest its share. Where none does, `undefined`. Sets are left out whose rooms that stay are too
 * far from each other, which moving the others does not change.
 */
export function fewestMoves(
  ducts: Ducts,
  stateAt: StateAt,
  before: State,
  may: (state: State) => boolean,
  within: number,
): Fewest | undefined {
  const n = ducts.places.length;
  let tried = 0;
  for (let size = 1; size <= n; size++) {
    let best: Fewest | undefined;
    for (const moved of setsOf(n, size)) {
      if (!worthTrying(ducts, before, moved) || tried >= triedMost) continue;
      tried++;
      const found = onMarks(ducts, stateAt, setTo(ducts, stateAt, before.losses, moved), moved, may);
      if (found && found.worst <= within && (!best || found.worst < best.state.worst - 1e-12))
        best = { state: found, moved, tried };
    }
    if (best) return { ...best, tried };
  }
  return undefined;
}

/** All sets of that many of n; of more than twelve dampers only those of one, two, three and all. */
function* setsOf(n: number, size: number, from = 0): Generator<number[]> {
  if (n > allSetsMost && size > 3 && size < n) return;
  if (size === 0) {
    yield [];
    return;
  }
  for (let i = from; i <= n - size; i++) for (const rest of setsOf(n, size - 1, i + 1)) yield [i, ...rest];
}

function worthTrying({ places }: Ducts, { parts }: State, moved: readonly number[]): boolean {
  const rooms = new Set(moved.map((i) => places[i]?.room));
  const stay = Object.entries(parts).flatMap(([room, part]) => (rooms.has(room) ? [] : [part]));
  return stay.length === 0 || Math.max(...stay) / Math.min(...stay) <= ((1 + band) / (1 - band)) * looser;
}

/** How far beyond the band a set may be before its blades are shifted mark by mark. */
const nearlyIn = 1.3;
const passesMost = 3;

/** The same with each blade on a mark, and mark by mark nearer while that helps; undefined where the blower may not. */
export function onMarks(
  { places }: Ducts,
  stateAt: StateAt,
  exact: State | undefined,
  moved: readonly number[],
  may: (state: State) => boolean,
): State | undefined {
  if (!exact) return undefined;
  const marked = (losses: readonly number[], shifted = -1, by = 0) =>
    losses.map((loss, i) => {
      const place = places[i];
      return place && moved.includes(i) ? byHand(place, loss, i === shifted ? by : 0) : loss;
    });
  let best = stateAt(marked(exact.losses));
  if (!best) return undefined;
  let better = exact.worst <= nearlyIn * band;
  for (let pass = 0; better && pass < passesMost; pass++) {
    better = false;
    for (const i of moved)
      for (const by of [-1, 1]) {
        const next = stateAt(marked(best.losses, i, by));
        if (!next || !may(next) || next.worst > best.worst - 1e-6) continue;
        [best, better] = [next, true];
      }
  }
  return may(best) ? best : undefined;
}
