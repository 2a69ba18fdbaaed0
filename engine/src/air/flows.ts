import {
  type CompiledNetwork,
  compileNetwork,
  type NetworkNode,
  type NetworkSolution,
  type NetworkSpec,
  relay,
  solveNetwork,
} from '../physics/network/index.ts';
import { unresolved } from '../plan/outcome.ts';
import type { AirFlows, AirModel, DuctSection } from './ductwork.ts';
import { type AirAt, addedPressure, networkParts, rooms, shareLink } from './networkParts.ts';
import { sameOnes } from './sameOnes.ts';

/** °C of all air where nothing is known of its temperature yet; the agreed state refines it. */
export const nominalAir = { supplyTemperature: 20, returnTemperature: 20 } as const;

/** Flows as solved, by place: numbers stand in the order of the model's sections, then its terminals, filter and blower. */
export type PlacedFlows = ReturnType<typeof unitState> & {
  /** m³/s by section and terminal; also flows to begin a like system from. */
  readonly start: Float64Array;
  /** Pa against the rooms at the unit, then at the far end of each section. */
  readonly pressures: Float64Array;
  /** Pa of those at the far ends alone. */
  readonly ends: Float64Array;
};

/** The same with their names. */
export type SolvedFlows = AirFlows & PlacedFlows;

type Solver<F> = (model: AirModel, at: AirAt, start?: Float64Array) => F;
export type FlowSolver = Solver<SolvedFlows>;

/**
 * What really flows: blower, filter, both trees and their registers solved together, every door open, so that all rooms
 * are at one pressure. Flows are m³/s of return air at the blower; supply air, warmer or colder, moves faster for it.
 * Leaks take their share of what each section carries. `start` are flows of a like system to begin from; the answer
 * does not depend on them beyond the solver's tolerance.
 */
export const solveFlows: FlowSolver = (model, at, start) => flowSolver()(model, at, start);

/** Solves like systems one after the other: what stays the same is laid out once. The answers are those of `solveFlows`. */
export function flowSolver(): FlowSolver {
  const solve = placedSolver();
  return (model, at, start) => named(model, solve(model, at, start));
}

/** The same for who needs no names: those take longer than a like system takes to solve. */
export function placedSolver(): Solver<PlacedFlows> {
  const parts = networkParts(shareLink);
  const solve = networkSolver();
  const withRooms = sameOnes<readonly NetworkNode[]>();
  return (model, at, start) => {
    const { ends: outer, links } = parts(model, at);
    const nodes = withRooms(0, [outer], () => [...outer, rooms]);
    const { solution } = solve({ nodes, links: links() }, start);
    const { pressures, flows } = solution;
    const ends = pressures.subarray(3, 3 + model.sections.length);
    return { ...unitState(model, solution), start: flows, pressures, ends };
  };
}

/** Lays a network out once for all specs that differ in the sizes of their links alone. `wanted` as in `solveNetwork`. */
export function networkSolver(wanted?: number): (spec: NetworkSpec, start?: Float64Array) => Laid {
  let last: { readonly spec: NetworkSpec; readonly net: CompiledNetwork } | undefined;
  return (spec, start) => {
    const net = last ? relay(last.net, last.spec, spec) : compileNetwork(spec);
    last = { spec, net };
    return { net, solution: solveNetwork(net, start, wanted) };
  };
}

type Laid = { readonly net: CompiledNetwork; readonly solution: NetworkSolution };

/** What `solveFlows` solves: links are named `section X`, `terminal X`, `filter` and `blower`. */
export function networkOf(model: AirModel, at: AirAt): NetworkSpec {
  const { ends, links } = networkParts(shareLink)(model, at);
  return { nodes: [...ends, rooms], links: links() };
}

type Solved = Pick<NetworkSolution, 'converged' | 'imbalance' | 'pressures' | 'flows'>;

/** What the unit sees: links and nodes stand in the order in which `linksOf` and `unitAndEnds` give them. */
export function unitState(model: AirModel, { converged, imbalance, pressures, flows }: Solved) {
  const flow = flows[model.sections.length + model.terminals.length + 1] ?? 0;
  const [supply = 0, back = 0] = pressures;
  return { converged, residual: imbalance, flow, staticPressure: supply - back + addedPressure(model, flow) };
}

/** Flows with the names of what they flow through. */
export function named({ sections, terminals }: AirModel, placed: PlacedFlows): SolvedFlows {
  const { pressures, start: flows, ends } = placed;
  const [supply = 0, back = 0, beforeFilter = 0] = pressures;
  const number = new Map(sections.map((x, i) => [x.id, i]));
  const nearOf = (x: DuctSection): number =>
    x.from === undefined ? (x.side === 'supply' ? supply : beforeFilter) : (ends[number.get(x.from) ?? -1] ?? 0);
  const byId = <T extends { readonly id: string }>(items: readonly T[], value: (x: T, i: number) => number) =>
    Object.fromEntries(items.map((x, i) => [x.id, value(x, i)]));
  return {
    ...placed,
    filterPressure: beforeFilter - back,
    sections: byId(sections, (_, i) => flows[i] ?? 0),
    terminals: byId(terminals, (_, i) => flows[sections.length + i] ?? 0),
    drops: byId(sections, (x, i) => Math.abs(nearOf(x) - (ends[i] ?? 0))),
    supplyLeak: leakOf(sections, flows, 'supply'),
    returnLeak: leakOf(sections, flows, 'return'),
  };
}

/** m³/s that the sections of one side lose or draw in, `flows` by section. */
export const leakOf = (sections: readonly DuctSection[], flows: Float64Array, side: DuctSection['side']): number =>
  sections.reduce((a, x, i) => a + (x.side === side ? (flows[i] ?? 0) * x.leakage : 0), 0);

/** A blower table is read between its ends; a flow beyond them is no answer. */
export function inTable<F extends Pick<AirFlows, 'converged' | 'flow'>>(flows: F, model: AirModel): F {
  return beneathTable(flows, model) ? unresolved('out-of-range', blowerPath) : notBeyondTable(flows, model);
}

const blowerPath = 'candidates.*.blower.speeds';
const slack = 1e-9;
/** Of the table's least flow: with less than this nothing moves that can be told of. */
const shutOff = 0.05;

/** Whether ducts choke the blower below its table's least flow. Its last line is then continued, which whoever tells of it says. */
export const beneathTable = ({ flow }: Pick<AirFlows, 'flow'>, { blower }: AirModel): boolean =>
  flow < (blower.points[0]?.flow ?? 0) - slack;

/** Flows that the blower's table covers, or that lie beneath it: how badly choked ducts do can be told roughly. */
export function notBeyondTable<F extends Pick<AirFlows, 'converged' | 'flow'>>(flows: F, model: AirModel): F {
  if (!flows.converged) return unresolved('not-converged', 'routes.ducts');
  const [first, last] = [model.blower.points[0]?.flow ?? 0, model.blower.points.at(-1)?.flow ?? 0];
  if (flows.flow > last + slack || flows.flow <= shutOff * first) return unresolved('out-of-range', blowerPath);
  return flows;
}
