import { partsOf } from '../../air/balance/parts.ts';
import type { DamperPlace } from '../../air/balance/places.ts';
import { placeFlow } from '../../air/balance/ways.ts';
import { type FlowSolver, flowSolver, nominalAir } from '../../air/flows.ts';
import type { AirFlows, AirModel } from '../../air/result.ts';
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

/** Solves the same ducts with many settings of their dampers; undefined where flows do not settle. */
export function statesOf({ model, places, shares }: Ducts): (losses: readonly number[]) => State | undefined {
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
 * these let them: rooms that stay lie about the middle, moved ones come to it. Where no damper that stays is open, the
 * hardest of the moved stays open. Each round solves the whole network. Undefined where it does not settle.
 */
export function setTo(
  ducts: Ducts,
  stateAt: (losses: readonly number[]) => State | undefined,
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
function nextLosses({ model, places }: Ducts, state: State, moved: readonly number[], someOpen: boolean): number[] {
  const own = places.map((p, i) => ownOf(model, p, state, i));
  const partOf = (i: number) => state.parts[places[i]?.room ?? ''] ?? 1;
  const most = (i: number) => {
    const { drop, damper, pressure } = own[i] ?? { drop: 1, damper: 0, pressure: 1 };
    return partOf(i) * (drop / Math.max(drop - damper + bladeLosses.open * pressure, 1e-9)) ** (1 / growth);
  };
  const free = new Set(moved.map((i) => places[i]?.room));
  const stay = places.flatMap((p, i) => (free.has(p.room) ? [] : [partOf(i)]));
  const reach = moved.map(most);
  const hardest = Math.min(...reach);
  // A room that stays short with its damper open counts as one that cannot follow.
  let aim = stay.length > 0 ? middle(stay) : hardest;
  if (!someOpen || stay.length === 0) aim = hardest;
  else {
    const short = reach.filter((r) => r < aim);
    if (short.length > 0) aim = middle([...stay, ...short]);
  }
  return state.losses.map((loss, i) => {
    if (!moved.includes(i)) return loss;
    const { drop, damper, pressure } = own[i] ?? { drop: 1, damper: 0, pressure: 1 };
    const faster = aim / partOf(i);
    const wanted = (drop - (drop - damper) * faster ** growth) / Math.max(pressure * faster ** 2, 1e-12);
    return Math.min(bladeLosses.most, Math.max(bladeLosses.open, wanted));
  });
}

const middle = (parts: readonly number[]): number => (Math.min(...parts) + Math.max(...parts)) / 2;

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

/** A loss as a hand can set it: a round blade to a quarter of its marks; others by their reading, as they are. */
export function byHand(place: DamperPlace, loss: number): number {
  if (place.at !== 'collar' || place.diameter === undefined) return loss;
  return lossAt(Math.round(degreesOf(loss) / handStep) * handStep);
}

/** Degrees from open of a round blade with that loss. */
export function degreesOf(loss: number): number {
  const looked = bladeAngle(Math.min(bladeLosses.most, Math.max(bladeLosses.open, loss)));
  return looked.ok ? looked.value : 0;
}
