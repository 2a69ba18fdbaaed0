import { airDensity, airViscosity } from '../physics/air/index.ts';
import { compileNetwork, type NetworkLink, type NetworkNode, solveNetwork } from '../physics/network/index.ts';
import { unresolved } from '../plan/outcome.ts';
import type { AirFlows, AirModel, DuctSection } from './result.ts';

/** °C of all air where nothing is known of its temperature yet; the agreed state refines it. */
export const nominalAir = { supplyTemperature: 20, returnTemperature: 20 } as const;

export type AirAt = { readonly supplyTemperature: number; readonly returnTemperature: number };

/**
 * What really flows: blower, filter, both trees and their registers solved together. Flows are m³/s of return air at
 * the blower; supply air, warmer or colder, moves faster for it. Leaks take their share of what each section carries.
 * `start` are flows of a like system to begin from; the answer does not depend on them beyond the solver's tolerance.
 */
export function solveFlows(
  model: AirModel,
  at: AirAt,
  start?: Float64Array,
): AirFlows & { readonly start: Float64Array } {
  const net = compileNetwork({ nodes: nodesOf(model), links: linksOf(model, at) });
  const solution = solveNetwork(net, start);
  const solved: Solved = {
    flows: new Map(net.linkIds.map((id, i) => [id, solution.flows[i] ?? 0])),
    pressures: new Map(net.nodeIds.map((id, i) => [id, solution.pressures[i] ?? 0])),
    converged: solution.converged,
    residual: solution.imbalance,
  };
  return { ...describe(model, solved), start: solution.flows };
}

const end = (id: string): string => `end ${id}`;

/** The node at which a section joins the air handler or the section nearer to it. */
const near = (x: DuctSection): string =>
  x.from === undefined ? (x.side === 'supply' ? 'supply' : 'before filter') : end(x.from);

function nodesOf(model: AirModel): NetworkNode[] {
  const fixed: NetworkNode[] = [
    { id: 'room', pressure: 0 },
    { id: 'supply' },
    { id: 'return' },
    { id: 'before filter' },
  ];
  return [...fixed, ...model.sections.map((x) => ({ id: end(x.id) }))];
}

function linksOf(model: AirModel, at: AirAt): NetworkLink[] {
  const reference = airDensity(at.returnTemperature, model.pressure);
  const temperature = (side: DuctSection['side']) => (side === 'supply' ? at.supplyTemperature : at.returnTemperature);
  const sideOf = new Map(model.sections.map((x) => [x.id, x.side]));
  const ducts = model.sections.map((x) => ductLink(x, temperature(x.side), model.pressure, reference));
  const terminals = model.terminals.map((t): NetworkLink => {
    const side = sideOf.get(t.section) ?? 'supply';
    const density = airDensity(temperature(side), model.pressure);
    const coefficient = ((t.resistance * density) / standardDensity) * (reference / density) ** 2;
    const [from, to] = side === 'supply' ? [end(t.section), 'room'] : ['room', end(t.section)];
    return { id: `terminal ${t.id}`, kind: 'power', from, to, coefficient, exponent: 2 };
  });
  return [...ducts, ...terminals, ...unitLinks(model, reference / standardDensity)];
}

/** Velocity belongs to the air in the duct, flow to the blower's: the area is scaled by their densities. */
function ductLink(x: DuctSection, temperature: number, pressure: number, reference: number): NetworkLink {
  const density = airDensity(temperature, pressure);
  const [from, to] = x.side === 'supply' ? [near(x), end(x.id)] : [end(x.id), near(x)];
  return {
    id: `section ${x.id}`,
    kind: 'duct',
    from,
    to,
    // Supply air leaks out before the far end, air leaks into a return beyond its far end.
    ...(x.side === 'supply' ? { arrive: 1 - x.leakage } : { leave: 1 - x.leakage }),
    length: x.length,
    diameter: x.diameter,
    area: (x.area * density) / reference,
    roughness: x.roughness,
    factor: x.frictionFactor,
    loss: x.lossCoefficient,
    density,
    viscosity: airViscosity(temperature),
  };
}

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

type Solved = {
  readonly flows: ReadonlyMap<string, number>;
  readonly pressures: ReadonlyMap<string, number>;
  readonly converged: boolean;
  readonly residual: number;
};

function describe(model: AirModel, solved: Solved): AirFlows {
  const flow = (id: string): number => solved.flows.get(id) ?? 0;
  const pressure = (id: string): number => solved.pressures.get(id) ?? 0;
  const total = (side: DuctSection['side']) =>
    model.sections.reduce((a, x) => a + (x.side === side ? flow(`section ${x.id}`) * x.leakage : 0), 0);
  return {
    converged: solved.converged,
    residual: solved.residual,
    flow: flow('blower'),
    staticPressure: pressure('supply') - pressure('return') + addedPressure(model, flow('blower')),
    filterPressure: pressure('before filter') - pressure('return'),
    sections: Object.fromEntries(model.sections.map((x) => [x.id, flow(`section ${x.id}`)])),
    terminals: Object.fromEntries(model.terminals.map((t) => [t.id, flow(`terminal ${t.id}`)])),
    drops: Object.fromEntries(model.sections.map((x) => [x.id, Math.abs(pressure(near(x)) - pressure(end(x.id)))])),
    supplyLeak: total('supply'),
    returnLeak: total('return'),
  };
}

/** A blower table is read between its ends; a flow beyond them is no answer. */
export function inTable(flows: AirFlows, model: AirModel): AirFlows {
  const [first, last] = [model.blower.points[0]?.flow ?? 0, model.blower.points.at(-1)?.flow ?? 0];
  if (!flows.converged) return unresolved('not-converged', 'routes.ducts');
  const slack = 1e-9;
  if (flows.flow < first - slack || flows.flow > last + slack)
    return unresolved('out-of-range', 'candidates.*.blower.speeds');
  return flows;
}
