import { partsOf } from '../../air/balance/parts.ts';
import type { DamperPlace } from '../../air/balance/places.ts';
import { placeFlow } from '../../air/balance/ways.ts';
import type { AirFlows, AirModel } from '../../air/ductwork.ts';
import { type FlowSolver, flowSolver, nominalAir } from '../../air/flows.ts';
import { airDensity } from '../../physics/air/index.ts';
import { bladeAngle, bladeLosses } from '../../physics/flow/index.ts';
import { lossAt, withLosses } from './runs.ts';

/** Degrees: a quarter of the ten between a handle's marks. */
const handStep = 2.5;
const roundsMost = 40;
const settled = 1e-5;
/** Pa of a run grow about so with flow. */
const growth = 1.9;

/** The ducts as fitted, and what each room is to get. */
export type Ducts = {
  readonly model: AirModel;
  readonly places: readonly DamperPlace[];
  readonly shares: Readonly<Record<string, number>>;
};

export type State = {
  readonly losses: readonly number[];
  readonly flows: AirFlows;
  /** What each room gets, as a part of its share. */
  readonly parts: Readonly<Record<string, number>>;
  /** Farthest any room is from its share, as a part of it. */
  readonly worst: number;
};

export type StateAt = (losses: readonly number[]) => State | undefined;

/** Solves the same ducts with many settings of their dampers; undefined where flows do not settle. */
export function statesOf({ model, places, shares }: Ducts): StateAt {
  const sum = [...new Set(places.map((p) => p.room))].reduce((a, room) => a + Math.max(0, shares[room] ?? 0), 0);
  const wanted = Object.fromEntries(
    [...new Set(places.map((p) => p.room))].map((room) => [room, Math.max(0, shares[room] ?? 0) / sum]),
  );
  const solve: FlowSolver = flowSolver();
  let start: Float64Array | undefined;
  return (losses) => {
    const flows = solve(withLosses(model, places, losses), nominalAir, start);
    if (!flows.converged) return undefined;
    start = Float64Array.from(flows.start);
    const parts = partsOf(places, wanted, flows);
    return { losses, flows, parts, worst: Math.max(...Object.values(parts).map((p) => Math.abs(p - 1))) };
  };
}

/**
 * Sets the dampers `moved` (numbers of places), all others as they stand, so that rooms come as near to their shares as
 * these let them: the farthest of all, moved or not, is as near as can be. Where no damper that stays is open, the
 * hardest of the moved stays open. Each round solves the whole network. Undefined where it does not settle.
 */
export function setTo(
  ducts: Ducts,
  stateAt: StateAt,
  before: readonly number[],
  moved: readonly number[],
): State | undefined {
  const { places } = ducts;
  let losses = [...before];
  const someOpen = places.some((_, i) => !moved.includes(i) && isOpen(losses[i] ?? 0));
  let state = stateAt(losses);
  for (let round = 1; state; round++) {
    const next = nextLosses(ducts, state, moved, someOpen);
    const change = Math.max(0, ...next.map((k, i) => Math.abs(k / Math.max(losses[i] ?? 1, 1e-9) - 1)));
    if (change < settled || round >= roundsMost) return state;
    losses = next;
    state = stateAt(losses);
  }
  return undefined;
}

export const isOpen = (loss: number): boolean => loss <= bladeLosses.open * (1 + 1e-6);

/** The losses that would bring moved rooms to the middle of what those that cannot follow get. */
function nextLosses(
  { model, places, shares }: Ducts,
  state: State,
  moved: readonly number[],
  someOpen: boolean,
): number[] {
  const own = places.map((p, i) => ownOf(model, p, state, i));
  const partOf = (i: number) => state.parts[places[i]?.room ?? ''] ?? 1;
  const most = (i: number) => {
    const { drop, damper, pressure } = own[i] ?? { drop: 1, damper: 0, pressure: 1 };
    return partOf(i) * (drop / Math.max(drop - damper + bladeLosses.open * pressure, 1e-9)) ** (1 / growth);
  };
  const free = new Set(moved.map((i) => places[i]?.room));
  const whole = Object.keys(state.parts).reduce((a, room) => a + (shares[room] ?? 0), 0);
  const stay = Object.entries(state.parts).flatMap(([room, part]) =>
    free.has(room) ? [] : [{ part, weight: (shares[room] ?? 0) / whole }],
  );
  const reach = moved.map((i) => ({ part: most(i), weight: (shares[places[i]?.room ?? ''] ?? 0) / whole }));
  let aim = Math.min(...reach.map((r) => r.part));
  if (someOpen && stay.length > 0) {
    aim = aimFor(stay);
    // A room that stays short with its damper open counts as one that cannot follow.
    const short = reach.filter((r) => r.part < aim);
    if (short.length > 0 && short.length < reach.length) aim = aimFor([...stay, ...short]);
  }
  return state.losses.map((loss, i) => {
    if (!moved.includes(i)) return loss;
    const { drop, damper, pressure } = own[i] ?? { drop: 1, damper: 0, pressure: 1 };
    const faster = aim / partOf(i);
    const wanted = (drop - (drop - damper) * faster ** growth) / Math.max(pressure * faster ** 2, 1e-12);
    return Math.min(bladeLosses.most, Math.max(bladeLosses.open, wanted));
  });
}

type Held = { readonly part: number; readonly weight: number };
const thirds = 50;

/**
 * What the moved rooms are to get beside those that stay, in the latter's present measure, so that the farthest of all is
 * nearest its share once all is shared out anew: weights are shares of all air and sum to 1 with the moved rooms'.
 */
function aimFor(stay: readonly Held[]): number {
  const taken = stay.reduce((a, h) => a + h.weight * h.part, 0);
  const left = Math.max(1e-9, 1 - stay.reduce((a, h) => a + h.weight, 0));
  const [least, most] = [Math.min(...stay.map((h) => h.part)), Math.max(...stay.map((h) => h.part))];
  const movedAt = (level: number) => (1 - level * taken) / left;
  const worst = (level: number) =>
    Math.max(Math.abs(level * most - 1), Math.abs(level * least - 1), Math.abs(movedAt(level) - 1));
  let [low, high] = [0, 1 / Math.max(taken, 1e-9)];
  for (let i = 0; i < thirds; i++) {
    const [a, b] = [(2 * low + high) / 3, (low + 2 * high) / 3];
    if (worst(a) <= worst(b)) high = b;
    else low = a;
  }
  const level = (low + high) / 2;
  return movedAt(level) / level;
}

/** Pa from a place's damper into its room, of that the damper's own, and one velocity pressure there. */
function ownOf(model: AirModel, p: DamperPlace, { flows, losses }: State, i: number) {
  const [first = ''] = p.registers;
  const terminal = model.terminals.find((t) => t.id === first);
  const flow = p.at === 'collar' ? (flows.sections[p.id] ?? 0) : placeFlow(p, flows);
  const pressure = (airDensity(nominalAir.supplyTemperature, model.pressure) / 2) * (flow / p.area) ** 2;
  const damper = (losses[i] ?? 0) * pressure;
  const face = (terminal?.resistance ?? 0) * (flows.terminals[first] ?? 0) ** 2;
  if (p.at === 'register') return { drop: face + damper, damper, pressure };
  const byId = new Map(model.sections.map((x) => [x.id, x]));
  let drop = face;
  for (let x = byId.get(terminal?.section ?? ''); x; x = x.from === undefined ? undefined : byId.get(x.from)) {
    drop += flows.drops[x.id] ?? 0;
    if (x.id === p.id) break;
  }
  return { drop, damper, pressure };
}

/** A loss as a hand can set it, so many steps further: a round blade to a quarter of its marks; others by their reading, as they are. */
export function byHand(place: DamperPlace, loss: number, further = 0): number {
  if (place.at !== 'collar' || place.diameter === undefined) return loss;
  return lossAt((Math.round(degreesOf(loss) / handStep) + further) * handStep);
}

/** Degrees from open of a round blade with that loss. */
export function degreesOf(loss: number): number {
  const looked = bladeAngle(Math.min(bladeLosses.most, Math.max(bladeLosses.open, loss)));
  return looked.ok ? looked.value : 0;
}
