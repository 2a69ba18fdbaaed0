import { airDensity, airViscosity } from '../physics/air/index.ts';
import { frictionFactor } from '../physics/flow/index.ts';
import { type NetworkLink, type NetworkNode, compileNetwork, solveNetwork } from '../physics/network/index.ts';
import type { AirFlows, AirModel, DuctSection } from './result.ts';

export type AirAt = { readonly supplyTemperature: number; readonly returnTemperature: number };

const leakSweeps = 30;
const leakSettled = 1e-13;

/**
 * What really flows: blower, filter, both trees and their registers solved together. Flows are m³/s of return air at
 * the blower; supply air, warmer or colder, moves faster for it. Leaks take their share of what each section carries.
 */
export function solveFlows(model: AirModel, at: AirAt): AirFlows {
  const nodes = nodesOf(model);
  const links = linksOf(model, at);
  let leaks = new Map<string, number>();
  let solved = solveWith(nodes, links, leaks);
  for (let i = 0; i < leakSweeps; i++) {
    const next = leaksAt(model, solved.flows);
    const moved = Math.max(0, ...[...next].map(([id, q]) => Math.abs(q - (leaks.get(id) ?? 0))));
    leaks = next;
    solved = solveWith(nodes, links, leaks, solved.start);
    if (moved < leakSettled) break;
  }
  return describe(model, solved, leaks);
}

const end = (id: string): string => `end ${id}`;

function nodesOf(model: AirModel): NetworkNode[] {
  const fixed: NetworkNode[] = [{ id: 'room', pressure: 0 }, { id: 'supply' }, { id: 'return' }, { id: 'before filter' }];
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
  const near = x.from === undefined ? (x.side === 'supply' ? 'supply' : 'before filter') : end(x.from);
  const [from, to] = x.side === 'supply' ? [near, end(x.id)] : [end(x.id), near];
  return {
    id: `section ${x.id}`,
    kind: 'duct',
    from,
    to,
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
const standardDensity = 1.204;

/** At one speed a blower's pressure falls with the density of its air (fan laws). */
function unitLinks(model: AirModel, thinness: number): NetworkLink[] {
  const { filter, blower, added } = model;
  const design = blower.points.at(-1)?.flow ?? 0.3;
  // A filter counted in the table still needs a passage: a thousandth of a pascal at the design flow.
  const clean = Math.max(filter.pressure / (filter.velocity * filter.area) ** filter.exponent, 1e-3 / design ** filter.exponent);
  const extra = Math.max(added, 1e-3) / design ** 2;
  return [
    { id: 'filter', kind: 'power', from: 'before filter', to: 'return', coefficient: clean, exponent: filter.exponent },
    { id: 'blower', kind: 'fan', from: 'return', to: 'supply', points: lessAdded(blower.points, thinness, extra) },
  ];
}

/** Anything added beyond the unit takes its pressure from the blower's curve. */
const lessAdded = (points: AirModel['blower']['points'], thinness: number, extra: number) =>
  points.map((p) => ({ flow: p.flow, pressure: p.pressure * thinness - extra * p.flow ** 2 }));

type Solved = {
  readonly flows: ReadonlyMap<string, number>;
  readonly pressures: ReadonlyMap<string, number>;
  readonly converged: boolean;
  readonly residual: number;
  readonly start: Float64Array;
};

function solveWith(nodes: readonly NetworkNode[], links: readonly NetworkLink[], leaks: ReadonlyMap<string, number>, start?: Float64Array): Solved {
  const leaking = nodes.map((n) => {
    const q = leaks.get(n.id);
    return q === undefined ? n : { ...n, outflow: q };
  });
  const net = compileNetwork({ nodes: leaking, links }, frictionFactor);
  const solution = solveNetwork(net, start);
  return {
    flows: new Map(net.linkIds.map((id, i) => [id, solution.flows[i] ?? 0])),
    pressures: new Map(net.nodeIds.map((id, i) => [id, solution.pressures[i] ?? 0])),
    converged: solution.converged,
    residual: solution.imbalance,
    start: solution.flows,
  };
}

/** Supply loses at its far end, return gains there: each its share of what flows through the section. */
function leaksAt(model: AirModel, flows: ReadonlyMap<string, number>): Map<string, number> {
  return new Map(
    model.sections.map((x) => {
      const q = (flows.get(`section ${x.id}`) ?? 0) * x.leakage;
      return [end(x.id), x.side === 'supply' ? q : -q];
    }),
  );
}

function describe(model: AirModel, solved: Solved, leaks: ReadonlyMap<string, number>): AirFlows {
  const flow = (id: string): number => solved.flows.get(id) ?? 0;
  const pressure = (id: string): number => solved.pressures.get(id) ?? 0;
  const total = (side: DuctSection['side']) =>
    model.sections.reduce((a, x) => a + (x.side === side ? Math.abs(leaks.get(end(x.id)) ?? 0) : 0), 0);
  const nearOf = (x: DuctSection) => (x.from === undefined ? (x.side === 'supply' ? 'supply' : 'before filter') : end(x.from));
  return {
    converged: solved.converged,
    residual: solved.residual,
    flow: flow('blower'),
    staticPressure: pressure('supply') - pressure('return') + (Math.max(model.added, 1e-3) * flow('blower') ** 2) / (model.blower.points.at(-1)?.flow ?? 0.3) ** 2,
    filterPressure: pressure('before filter') - pressure('return'),
    sections: Object.fromEntries(model.sections.map((x) => [x.id, flow(`section ${x.id}`)])),
    terminals: Object.fromEntries(model.terminals.map((t) => [t.id, flow(`terminal ${t.id}`)])),
    drops: Object.fromEntries(model.sections.map((x) => [x.id, Math.abs(pressure(nearOf(x)) - pressure(end(x.id)))])),
    supplyLeak: total('supply'),
    returnLeak: total('return'),
  };
}
