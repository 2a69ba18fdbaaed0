import { airDensity, airViscosity } from '../physics/air/index.ts';
import {
  type CompiledNetwork,
  compileNetwork,
  type NetworkLink,
  type NetworkNode,
  type NetworkSolution,
  type NetworkSpec,
  relay,
  solveNetwork,
} from '../physics/network/index.ts';
import { unresolved } from '../plan/outcome.ts';
import type { AirFlows, AirModel, DuctSection, Terminal } from './result.ts';

/** °C of all air where nothing is known of its temperature yet; the agreed state refines it. */
export const nominalAir = { supplyTemperature: 20, returnTemperature: 20 } as const;

export type AirAt = { readonly supplyTemperature: number; readonly returnTemperature: number };

/** Flows as solved; `start` are flows to begin a like system from, `ends` Pa at the far end of each section against the rooms. */
export type SolvedFlows = AirFlows & { readonly start: Float64Array; readonly ends: Float64Array };

export type FlowSolver = (model: AirModel, at: AirAt, start?: Float64Array) => SolvedFlows;

/**
 * What really flows: blower, filter, both trees and their registers solved together, every door open, so that all rooms
 * are at one pressure. Flows are m³/s of return air at the blower; supply air, warmer or colder, moves faster for it.
 * Leaks take their share of what each section carries. `start` are flows of a like system to begin from; the answer
 * does not depend on them beyond the solver's tolerance.
 */
export const solveFlows: FlowSolver = (model, at, start) => flowSolver()(model, at, start);

/** Solves like systems one after the other: what stays the same is laid out once. The answers are those of `solveFlows`. */
export function flowSolver(): FlowSolver {
  const links = sectionLinks(shareLink);
  const solve = networkSolver();
  return (model, at, start) => {
    const { solution } = solve(specOf(model, at, links(model, at)), start);
    return { ...describe(model, solution), start: solution.flows };
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

export const end = (id: string): string => `end ${id}`;

/** The node at which a section joins the air handler or the section nearer to it. */
const near = (x: DuctSection): string =>
  x.from === undefined ? (x.side === 'supply' ? 'supply' : 'before filter') : end(x.from);

/** Nodes of the unit and at the far ends of all sections, in this order. */
export const unitAndEnds = (model: AirModel): NetworkNode[] => [
  { id: 'supply' },
  { id: 'return' },
  { id: 'before filter' },
  ...model.sections.map((x) => ({ id: end(x.id) })),
];

const specOf = (model: AirModel, at: AirAt, ducts: readonly NetworkLink[]): NetworkSpec => ({
  nodes: [...unitAndEnds(model), { id: 'room', pressure: 0 }],
  links: linksOf(model, at, ducts),
});

/** What `solveFlows` solves: links are named `section X`, `terminal X`, `filter` and `blower`. */
export const networkOf = (model: AirModel, at: AirAt): NetworkSpec =>
  specOf(model, at, sectionLinks(shareLink)(model, at));

/** Sections, terminals, filter, blower, in this order; terminals lead into the node that `roomOf` names. */
export function linksOf(
  model: AirModel,
  at: AirAt,
  ducts: readonly NetworkLink[],
  roomOf: (t: Terminal) => string = () => 'room',
): NetworkLink[] {
  const reference = airDensity(at.returnTemperature, model.pressure);
  const supply = airDensity(at.supplyTemperature, model.pressure);
  const sideOf = new Map(model.sections.map((x) => [x.id, x.side]));
  const terminals = model.terminals.map((t): NetworkLink => {
    const blows = (sideOf.get(t.section) ?? 'supply') === 'supply';
    const density = blows ? supply : reference;
    const coefficient = ((t.resistance * density) / standardDensity) * (reference / density) ** 2;
    const [from, to] = blows ? [end(t.section), roomOf(t)] : [roomOf(t), end(t.section)];
    return { id: `terminal ${t.id}`, kind: 'power', from, to, coefficient, exponent: 2 };
  });
  return [...ducts, ...terminals, ...unitLinks(model, reference / standardDensity)];
}

type SectionLink = (x: DuctSection, temperature: number, pressure: number, reference: number) => NetworkLink;

/** Links of all sections; one whose section and air are those of the last call is the same object. */
export function sectionLinks(link: SectionLink): (model: AirModel, at: AirAt) => readonly NetworkLink[] {
  let made: readonly NetworkLink[] = [];
  let [of, air]: [readonly DuctSection[], string] = [[], ''];
  return (model, at) => {
    const key = `${at.supplyTemperature} ${at.returnTemperature} ${model.pressure}`;
    const kept = key === air ? made : [];
    const reference = airDensity(at.returnTemperature, model.pressure);
    made = model.sections.map((x, i) => {
      const same = of[i] === x ? kept[i] : undefined;
      const temperature = x.side === 'supply' ? at.supplyTemperature : at.returnTemperature;
      return same ?? link(x, temperature, model.pressure, reference);
    });
    [of, air] = [model.sections, key];
    return made;
  };
}

/** Supply air leaks out before the far end, air leaks into a return beyond its far end: a share of what it carries. */
const shareLink: SectionLink = (x, temperature, pressure, reference) => {
  const kept = 1 - x.leakage;
  return ductLink(x, temperature, pressure, reference, x.side === 'supply' ? { arrive: kept } : { leave: kept });
};

/** Velocity belongs to the air in the duct, flow to the blower's: the area is scaled by their densities. */
export const ductLink = (
  x: DuctSection,
  temperature: number,
  pressure: number,
  reference: number,
  shares: { readonly leave?: number; readonly arrive?: number } = {},
): NetworkLink => {
  const density = airDensity(temperature, pressure);
  const [from, to] = x.side === 'supply' ? [near(x), end(x.id)] : [end(x.id), near(x)];
  return {
    id: `section ${x.id}`,
    kind: 'duct',
    from,
    to,
    ...shares,
    length: x.length,
    diameter: x.diameter,
    area: (x.area * density) / reference,
    roughness: x.roughness,
    factor: x.frictionFactor,
    loss: x.lossCoefficient,
    density,
    viscosity: airViscosity(temperature),
  };
};

/** kg/m³ of the air that blower tables and sheets are stated for. */
export const standardDensity = 1.204;

/** Filter, then blower. At one speed a blower's pressure falls with the density of its air (fan laws). */
export function unitLinks(model: AirModel, thinness: number): NetworkLink[] {
  const { filter, blower } = model;
  const design = designFlow(blower);
  // A filter counted in the table still needs a passage: a thousandth of a pascal at the design flow.
  const clean = Math.max(
    filter.pressure / (filter.velocity * filter.area) ** filter.exponent,
    1e-3 / design ** filter.exponent,
  );
  return [
    { id: 'filter', kind: 'power', from: 'before filter', to: 'return', coefficient: clean, exponent: filter.exponent },
    { id: 'blower', kind: 'fan', from: 'return', to: 'supply', points: lessAdded(model, thinness) },
  ];
}

/** Anything added beyond the unit takes its pressure from the blower's curve. */
const lessAdded = (model: AirModel, thinness: number) =>
  model.blower.points.map(({ flow, pressure }) => ({
    flow,
    pressure: pressure * thinness - addedPressure(model, flow),
  }));

/** Pa that what is added beyond the unit takes at a flow; stated at the most the blower moves. */
export const addedPressure = ({ added, blower }: AirModel, flow: number): number =>
  (Math.max(added, 1e-3) / designFlow(blower) ** 2) * flow ** 2;

const designFlow = (blower: AirModel['blower']): number => blower.points.at(-1)?.flow ?? 0.3;

type Solved = Pick<NetworkSolution, 'converged' | 'imbalance' | 'pressures' | 'flows'>;

/** What the unit sees: links and nodes stand in the order in which `linksOf` and `unitAndEnds` give them. */
export function unitState(model: AirModel, { converged, imbalance, pressures, flows }: Solved) {
  const flow = flows[model.sections.length + model.terminals.length + 1] ?? 0;
  const [supply = 0, back = 0] = pressures;
  return { converged, residual: imbalance, flow, staticPressure: supply - back + addedPressure(model, flow) };
}

function describe(model: AirModel, solution: Solved): Omit<SolvedFlows, 'start'> {
  const { sections, terminals } = model;
  const { pressures, flows } = solution;
  const [supply = 0, back = 0, beforeFilter = 0] = pressures;
  const ends = pressures.slice(3, 3 + sections.length);
  const number = new Map(sections.map((x, i) => [x.id, i]));
  const nearOf = (x: DuctSection): number =>
    x.from === undefined ? (x.side === 'supply' ? supply : beforeFilter) : (ends[number.get(x.from) ?? -1] ?? 0);
  const byId = <T extends { readonly id: string }>(items: readonly T[], value: (x: T, i: number) => number) =>
    Object.fromEntries(items.map((x, i) => [x.id, value(x, i)]));
  const total = (side: DuctSection['side']) =>
    sections.reduce((a, x, i) => a + (x.side === side ? (flows[i] ?? 0) * x.leakage : 0), 0);
  return {
    ...unitState(model, solution),
    filterPressure: beforeFilter - back,
    sections: byId(sections, (_, i) => flows[i] ?? 0),
    terminals: byId(terminals, (_, i) => flows[sections.length + i] ?? 0),
    drops: byId(sections, (x, i) => Math.abs(nearOf(x) - (ends[i] ?? 0))),
    supplyLeak: total('supply'),
    returnLeak: total('return'),
    ends,
  };
}

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
