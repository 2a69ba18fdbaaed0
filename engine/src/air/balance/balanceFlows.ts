import type { AirFlows, AirModel } from '../ductwork.ts';
import { nominalAir, solveFlows } from '../flows.ts';
import type { AirAt } from '../networkParts.ts';
import { dampered } from './dampered.ts';
import type { DamperPlace } from './places.ts';
import { placeFlow, type WayLoss, wayLosses } from './ways.ts';

export type DamperRange = {
  /** Loss coefficient of a damper that stands open, and of one turned as far as it may be. */
  readonly open: number;
  readonly most: number;
};

export type BalancedFlows = {
  readonly converged: boolean;
  readonly rounds: number;
  /** Largest miss of a share that dampers can still set, as a part of it. */
  readonly miss: number;
  /** Loss coefficient of every room's dampers; those of one room stand alike. */
  readonly losses: Readonly<Record<string, number>>;
  /** Rooms that get more than their share with their dampers turned as far as they may be. */
  readonly beyond: readonly string[];
  readonly flows: AirFlows;
};

const roundsMost = 100;
/** Of a room's share. */
const missWanted = 1e-9;
/** A round that leaves more than this part of the miss before it is followed by one of half the step. */
const stalled = 0.7;
const stepLeast = 1 / 8;

/**
 * Damper settings at which every room gets its share of all the air that reaches rooms, at the least loss: one room's
 * dampers stay open. `shares` by room need not sum to 1. Each round solves blower, ducts and registers with the dampers
 * as they stand, and sets them anew by what every way takes at the flows wanted. Where a damper would have to be turned
 * further than it may, it stays there, and the other rooms share the rest; a room that is to get nothing likewise.
 * At most 100 rounds for each such step. A room with a register and no share here counts as one that is to get nothing.
 */
export function balanceFlows(
  model: AirModel,
  places: readonly DamperPlace[],
  shares: Readonly<Record<string, number>>,
  range: DamperRange,
  at: AirAt = nominalAir,
): BalancedFlows {
  const rooms = [...new Set(places.map((p) => p.room))];
  const beyond = rooms.filter((room) => !((shares[room] ?? 0) > 0));
  let start: Start = { losses: Object.fromEntries(rooms.map((room) => [room, range.open])) };
  for (;;) {
    const found = settle({ model, places, shares, range, at, beyond }, start);
    const [worst] = rooms
      .filter((room) => !beyond.includes(room) && (found.losses[room] ?? 0) > range.most)
      .sort((a, b) => (found.losses[b] ?? 0) - (found.losses[a] ?? 0) || (a < b ? -1 : 1));
    if (worst === undefined) return { ...found, beyond };
    beyond.push(worst);
    start = found;
  }
}

type Task = {
  readonly model: AirModel;
  readonly places: readonly DamperPlace[];
  readonly shares: Readonly<Record<string, number>>;
  readonly range: DamperRange;
  readonly at: AirAt;
  readonly beyond: readonly string[];
};
type Start = { readonly losses: Readonly<Record<string, number>>; readonly start?: Float64Array };

function settle(task: Task, from: Start): Omit<BalancedFlows, 'beyond'> & Start {
  const { model, places, range, beyond } = task;
  const held = Object.fromEntries(beyond.map((room) => [room, range.most]));
  let losses: Record<string, number> = { ...from.losses, ...held };
  let { start } = from;
  let [step, before] = [1, Number.POSITIVE_INFINITY];
  for (let rounds = 1; ; rounds++) {
    const byPlace = new Map(places.map((p) => [p.id, losses[p.room] ?? range.open]));
    const { start: solved, ...flows } = solveFlows(dampered(model, places, byPlace), task.at, start);
    start = solved;
    const wanted = wantedOf(task, flows);
    const miss = Math.max(0, ...places.map((p, i) => Math.abs(placeFlow(p, flows) / (wanted[i] ?? 0) - 1)));
    const good = flows.converged && Number.isFinite(miss);
    if (!good || miss <= missWanted || rounds >= roundsMost)
      return { converged: good && miss <= missWanted, rounds, miss, losses, flows, start };
    const ways = wayLosses(task.model, places, { flows, losses: byPlace }, wanted, task.at);
    // Rooms with several unlike ways may swing to and fro: smaller steps calm them.
    if (miss > stalled * before) step = Math.max(stepLeast, step / 2);
    before = miss;
    const next = settings(task, ways, flows);
    losses = Object.fromEntries(places.map(({ room }) => [room, blend(losses[room], next[room], step)]));
    Object.assign(losses, held);
  }
}

/** Part of the way from one loss to the next; a first one is taken whole. */
const blend = (from: number | undefined, to: number | undefined, step: number): number =>
  from === undefined ? (to ?? 0) : from + step * ((to ?? from) - from);

/** m³/s that each place is to give: its room's share of what the rooms that can be set get together now. */
function wantedOf({ places, shares, beyond }: Task, flows: AirFlows): number[] {
  const free = places.filter((p) => !beyond.includes(p.room));
  const all = free.reduce((a, p) => a + placeFlow(p, flows), 0);
  const byRoom = new Map<string, number>();
  for (const p of free) byRoom.set(p.room, (byRoom.get(p.room) ?? 0) + placeFlow(p, flows));
  const sum = [...byRoom.keys()].reduce((a, room) => a + (shares[room] ?? 0), 0);
  return places.map((p) => {
    const now = placeFlow(p, flows);
    if (beyond.includes(p.room)) return now;
    return (now * (((shares[p.room] ?? 0) / sum) * all)) / (byRoom.get(p.room) ?? 1);
  });
}

/** The loss that brings every room's ways, weighed by their flows, up to that of the hardest room with open dampers. */
function settings({ places, range, beyond }: Task, ways: readonly WayLoss[], flows: AirFlows): Record<string, number> {
  const sums = new Map<string, { flow: number; loss: number; pressure: number }>();
  places.forEach((p, i) => {
    if (beyond.includes(p.room)) return;
    const [way, flow] = [ways[i], placeFlow(p, flows)];
    const sum = sums.get(p.room) ?? { flow: 0, loss: 0, pressure: 0 };
    const [loss, pressure] = [way?.loss ?? 0, way?.velocityPressure ?? 0];
    sums.set(p.room, {
      flow: sum.flow + flow,
      loss: sum.loss + flow * loss,
      pressure: sum.pressure + flow * pressure,
    });
  });
  const means = [...sums].map(([room, s]) => ({ room, loss: s.loss / s.flow, pressure: s.pressure / s.flow }));
  const hardest = Math.max(...means.map((m) => m.loss + range.open * m.pressure));
  return Object.fromEntries(means.map((m) => [m.room, Math.max(range.open, (hardest - m.loss) / m.pressure)]));
}
