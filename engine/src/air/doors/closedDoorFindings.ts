import { inOrder, type Range } from '@kneewall/project';
import { airDensity } from '../../physics/air/index.ts';
import { type ClosedDoor, closedDoorPressure, openingFor } from '../../physics/flow/index.ts';
import { attempt, type Outcome, required, unresolved } from '../../plan/outcome.ts';
import { type Scenario, scenario, spread } from '../../plan/scenario.ts';
import type { PlanView } from '../../plan/trade.ts';
import { recordWorking, type WorkingRecorder } from '../../plan/working.ts';
import { asGiven } from '../asGiven.ts';
import type { Found } from '../findings.ts';
import type { AirFlows, AirModel, AirResult } from '../result.ts';
import { doorShuts, leakOf, netSupply, type Opening, openingOf, type Room } from './shut.ts';

/** Pa between a shut bedroom and the hall. Source: `air.closed-door`. */
export const doorPressureMost = 3;
/** °C of the air that passes under doors. */
const roomTemperature = 20;
/** m³/s below which a room is as good as not fed: a hundredth of a litre a second. */
const hardlyAny = 1e-5;

/** Each room whose door is shut at times: the pressure that builds up behind it, and what would let the air out. */
export function closedDoorFindings(result: AirResult, model: AirModel, flows: AirFlows, view: PlanView): Found[] {
  return inOrder(view.project.house.rooms).flatMap(([id, room]) => {
    if (!doorShuts(room, scenario()) || Math.abs(netSupply(id, model, flows)) < hardlyAny) return [];
    return [closedDoor(id, room, { result, model, flows, view })];
  });
}

type At = {
  readonly result: AirResult;
  readonly model: AirModel;
  readonly flows: AirFlows;
  readonly view: PlanView;
};

function closedDoor(id: string, room: Room, at: At): Found {
  const density = airDensity(roomTemperature, at.model.pressure);
  const { recorder, steps } = recordWorking();
  const inputs = attempt(() => inputsOf(id, room, at));
  const value = attempt((): Range => {
    const given = required(inputs);
    const likely = solved(given, density, scenario());
    record(likely, density, recorder);
    const { pressure } = spread((s) => ({ pressure: solved(given, density, s).door.pressure }));
    return { low: pressure.low, likely: likely.door.pressure, high: pressure.high };
  });
  return {
    draft: {
      id: `closed-door:${id}`,
      subject: id,
      holdPoint: 'cut',
      consequence: 'comfort',
      kind: 'pressure',
      value,
      limit: { max: doorPressureMost },
      source: 'air.closed-door',
      working: `air/closed-door:${id}`,
      facts: { name: room.name ?? id, ...wayOut(inputs, density) },
    },
    working: steps,
  };
}

type Inputs = {
  readonly room: Room;
  /** m³/s, positive: what has to pass, and which way. */
  readonly flow: Range;
  readonly outward: boolean;
  readonly leak: (s: Scenario) => { readonly coefficient: number; readonly exponent: number };
};

function inputsOf(id: string, room: Room, { result, model, flows, view }: At): Inputs {
  const reaches = required(result.rooms[id]?.reaches ?? { ok: false, because: 'missing', paths: ['house.rooms'] });
  const back = reaches.likely - netSupply(id, model, flows);
  const net = [reaches.low - back, reaches.likely - back, reaches.high - back].map(Math.abs);
  const leaks = view.trades.loads?.leaks;
  const coefficient = leaks?.ok ? asGiven('house.airtightness', 'number', leaks.value.coefficient) : undefined;
  return {
    room,
    flow: { low: Math.min(...net), likely: net[1] ?? 0, high: Math.max(...net) },
    outward: reaches.likely > back,
    leak: (s) => leakOf(id, leaks, coefficient ? s.of(coefficient) : 0),
  };
}

type Solved = { readonly flow: number; readonly opening: Opening; readonly leak: Leak; readonly door: ClosedDoor };
type Leak = { readonly coefficient: number; readonly exponent: number };

function solved({ room, flow, leak }: Inputs, density: number, s: Scenario): Solved {
  const q = s.of(asGiven('routes.ducts', 'flow', flow));
  const opening = openingOf(room, s);
  const own = leak(s);
  const door = closedDoorPressure({ opening: opening.all, leak: own }, q, density);
  return { flow: q, opening, leak: own, door: door ?? unresolved('missing', pathOf(room.door.gap)) };
}

const pathOf = (field: { readonly path: string }): string => field.path;

function record({ flow, opening, leak, door }: Solved, density: number, recorder: WorkingRecorder): void {
  const source = 'air.closed-door';
  const { gap, width, transfer, all } = opening;
  recorder.step('Q', 'table', {}, flow, 'm³/s', 'air.flows');
  recorder.step('A', 'h * w + A_transfer', { h: gap, w: width, A_transfer: transfer }, all, 'm²', source);
  recorder.step('c', 'table', {}, leak.coefficient, 'm³/(s·Paⁿ)', source);
  recorder.step(
    'dp',
    'solved',
    { Q: flow, A: all, rho: density, c: leak.coefficient, n: leak.exponent, residual: door.residual },
    door.pressure,
    'Pa',
    source,
  );
}

/** For the words: the gap that would do, and the grille. */
function wayOut(inputs: Outcome<Inputs>, density: number): Readonly<Record<string, number | string>> {
  const likely = attempt(() => solved(required(inputs), density, scenario()));
  if (!inputs.ok || !likely.ok) return {};
  const { flow, opening, leak } = likely.value;
  const needed = openingFor(doorPressureMost, flow, leak, density);
  return {
    flow,
    way: inputs.value.outward ? 'out' : 'in',
    gap: (needed - opening.transfer) / opening.width,
    extra: Math.max(0, needed - opening.all),
  };
}
