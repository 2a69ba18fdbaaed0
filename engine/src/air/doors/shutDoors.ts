import { airDensity } from '../../physics/air/index.ts';
import { orificeArea } from '../../physics/flow/index.ts';
import { compileNetwork, type NetworkLink, type NetworkSpec, solveNetwork } from '../../physics/network/index.ts';
import { type AirAt, ductLink, networkSolver, type SolvedFlows, sectionLinks, unitState } from '../flows.ts';
import { sideOf } from '../model.ts';
import type { AirModel } from '../result.ts';
import type { HouseAir, ShutDoors, ShutRoom, ShutRoomAir } from './houseAir.ts';
import { doorOf, hall, roomNode, shutNetwork } from './shutNetwork.ts';

/** Pa between a shut bedroom and the hall. Source: `air.closed-door`. */
export const doorPressureMost = 3;

export type ShutSolver = (model: AirModel, at: AirAt, open: SolvedFlows, house: HouseAir) => ShutDoors;

/**
 * Solves ducts, blower and house with the doors shut, for like systems one after the other; `open` are the flows of the
 * same model with all doors open. Pa, m³/s of return air. A house without a way to outdoors does not converge.
 * Source: `air.house-pressure`.
 */
export function shutSolver(wanted?: number): ShutSolver {
  const ducts = sectionLinks(ductLink);
  const solve = networkSolver(wanted);
  let start: Float64Array | undefined;
  return (model, at, open, house) => {
    const spec = shutNetwork(model, at, open, house, ducts(model, at));
    const { net, solution } = solve(spec, start?.length === spec.links.length ? start : undefined);
    start ??= solution.flows;
    const pressureAt = (node: string): number => solution.pressures[net.nodeIds.indexOf(node)] ?? 0;
    const inHall = pressureAt(hall);
    const shut = solution.flows.subarray(model.sections.length);
    const rooms = house.rooms.flatMap((r): [string, ShutRoomAir][] => {
      const node = net.nodeIds.indexOf(roomNode(r.id));
      if (node < 0) return [];
      const outdoors = solution.pressures[node] ?? 0;
      return [[r.id, { ...roomFlows(model, r, shut, open.terminals), pressure: outdoors - inHall, outdoors }]];
    });
    return { ...unitState(model, solution), house: inHall, rooms: Object.fromEntries(rooms) };
  };
}

/** `shut` by place of the terminal. */
function roomFlows(model: AirModel, room: ShutRoom, shut: Float64Array, open: Readonly<Record<string, number>>) {
  let [supply, back, before] = [0, 0, 0];
  model.terminals.forEach((t, i) => {
    if (t.room !== room.id) return;
    const q = shut[i] ?? 0;
    if (sideOf(model, t.section) === 'supply') {
      supply += q;
      before += open[t.id] ?? 0;
    } else back += q;
  });
  const { opening, leak } = room;
  return { supply, net: supply - back, lost: before > 0 ? 1 - supply / before : 0, opening, leak };
}

/**
 * Each room above the pressure allowed with the opening, m², that would hold it there, all else solved again: its door
 * is taken out and the pressure held in its place, and what then has to pass gives the opening.
 */
export function withEnough(shut: ShutDoors, model: AirModel, at: AirAt, open: SolvedFlows, house: HouseAir): ShutDoors {
  const spec = shutNetwork(model, at, open, house, sectionLinks(ductLink)(model, at));
  const density = airDensity(at.returnTemperature, model.pressure);
  const rooms = Object.entries(shut.rooms).map(([id, room]): [string, ShutRoomAir] => {
    const enough = Math.abs(room.pressure) > doorPressureMost ? openingFor(id, room, spec, density) : undefined;
    return [id, { ...room, ...(enough === undefined ? {} : { enough }) }];
  });
  return { ...shut, rooms: Object.fromEntries(rooms) };
}

function openingFor(id: string, room: ShutRoomAir, spec: NetworkSpec, density: number): number | undefined {
  const sign = Math.sign(room.pressure);
  const held: NetworkLink = {
    id: doorOf(id),
    kind: 'fan',
    from: roomNode(id),
    to: hall,
    // Nearly level, so that the pressure hardly hangs on the flow: a thousandth of a pascal for one m³/s.
    points: [-1, 1].map((flow) => ({ flow, pressure: -sign * doorPressureMost - 1e-3 * flow })),
  };
  const net = compileNetwork({ nodes: spec.nodes, links: [...spec.links.filter((l) => l.id !== held.id), held] });
  const { converged, flows } = solveNetwork(net);
  const passing = sign * (flows.at(-1) ?? 0);
  if (!converged) return undefined;
  return passing > 0 ? orificeArea(passing, doorPressureMost + 1e-3 * passing, density) : 0;
}
