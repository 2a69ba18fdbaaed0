import { airDensity } from '../../physics/air/index.ts';
import { orificeArea } from '../../physics/flow/index.ts';
import { compileNetwork, type NetworkLink, type NetworkSpec, solveNetwork } from '../../physics/network/index.ts';
import type { AirModel } from '../ductwork.ts';
import { networkSolver, type PlacedFlows, unitState } from '../flows.ts';
import { sideOf } from '../model.ts';
import type { AirAt } from '../networkParts.ts';
import type { HouseAir, ShutDoors, ShutRoom, ShutRoomAir } from './houseAir.ts';
import { doorOf, hall, roomNode, shutNetworks } from './shutNetwork.ts';

/** Pa between a shut bedroom and the hall. Source: `air.closed-door`. */
export const doorPressureMost = 3;

export type ShutSolver = (model: AirModel, at: AirAt, open: PlacedFlows, house: HouseAir) => ShutDoors;

/**
 * Solves ducts, blower and house with the doors shut, for like systems one after the other; `open` are the flows of the
 * same model with all doors open. Pa, m³/s of return air. A house without a way to outdoors does not converge.
 * Source: `air.house-pressure`.
 */
export function shutSolver(wanted?: number): ShutSolver {
  const laidOut = shutNetworks();
  const solve = networkSolver(wanted);
  let start: Float64Array | undefined;
  return (model, at, open, house) => {
    const spec = laidOut(model, at, open, house);
    const { net, solution } = solve(spec, start?.length === spec.links.length ? start : undefined);
    start ??= solution.flows;
    const inHall = solution.pressures[net.nodeIds.indexOf(hall)] ?? 0;
    const shut = solution.flows.subarray(model.sections.length);
    const rooms = house.rooms.flatMap((r): [string, ShutRoomAir][] => {
      const node = net.nodeIds.indexOf(roomNode(r.id));
      if (node < 0) return [];
      const outdoors = solution.pressures[node] ?? 0;
      return [
        [
          r.id,
          {
            ...roomFlows(model, r, shut, open.start.subarray(model.sections.length)),
            pressure: outdoors - inHall,
            outdoors,
          },
        ],
      ];
    });
    return { ...unitState(model, solution), house: inHall, rooms: Object.fromEntries(rooms) };
  };
}

/** `shut` and `open` by place of the terminal. */
function roomFlows(model: AirModel, room: ShutRoom, shut: Float64Array, open: Float64Array) {
  let [supply, back, before] = [0, 0, 0];
  model.terminals.forEach((t, i) => {
    if (t.room !== room.id) return;
    const q = shut[i] ?? 0;
    if (sideOf(model, t.section) === 'supply') {
      supply += q;
      before += open[i] ?? 0;
    } else back += q;
  });
  const { opening, leak } = room;
  return { supply, net: supply - back, lost: before > 0 ? 1 - supply / before : 0, opening, leak };
}

/**
 * Each room above the pressure allowed with the opening, m², that would hold it there, all else solved again: its door
 * is taken out and the pressure held in its place, and what then has to pass gives the opening.
 */
export function withEnough(shut: ShutDoors, model: AirModel, at: AirAt, open: PlacedFlows, house: HouseAir): ShutDoors {
  const spec = shutNetworks()(model, at, open, house);
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
