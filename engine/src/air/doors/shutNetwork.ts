import { airDensity } from '../../physics/air/index.ts';
import { dischargeCoefficient } from '../../physics/flow/index.ts';
import { usualExponent } from '../../physics/infiltration/index.ts';
import type { NetworkLink, NetworkNode, NetworkSpec } from '../../physics/network/index.ts';
import { type AirAt, end, linksOf, type SolvedFlows, unitAndEnds } from '../flows.ts';
import type { AirModel, DuctSection } from '../result.ts';
import type { HouseAir, ShutRoom } from './houseAir.ts';
import { type Around, around } from './outdoors.ts';

export const hall = 'hall';
/** m² of opening, and m³/(s Paⁿ) of leaks, that are as good as none. */
const hardlyAny = 1e-12;
export const roomNode = (id: string): string => `room ${id}`;
export const doorOf = (id: string): string => `door ${id}`;

/**
 * Ducts, unit and house as one network in which every bit of air has its way: rooms hang on the hall by what their shut
 * doors leave open, rooms and hall on outdoors by their leaks. Ducts leak through holes of the size at which they lose
 * their share with all doors open (`open`), to the hall where they run inside, else outdoors: the attic and the space
 * below are taken to stand at the pressure of outdoors, mean of all sides. Pressures indoors are those at the lowest
 * floor. `ducts` are the links of the sections, without leaks.
 */
export function shutNetwork(
  model: AirModel,
  at: AirAt,
  open: SolvedFlows,
  house: HouseAir,
  ducts: readonly NetworkLink[],
): NetworkSpec {
  const fed = new Set(model.terminals.map((t) => t.room));
  const rooms = house.rooms.filter((r) => r.opening > hardlyAny || r.leak > hardlyAny || fed.has(r.id));
  const behind = new Set(rooms.map((r) => r.id));
  const place = (room: string): string => (behind.has(room) ? roomNode(room) : hall);
  const density = airDensity(at.returnTemperature, model.pressure);
  const sky = around(house);
  const nodes: NetworkNode[] = [
    ...unitAndEnds(model),
    hallNode(house, behind),
    ...rooms.map((r) => ({ id: roomNode(r.id), outflow: house.exhaust[r.id] ?? 0 })),
    ...sky.nodes,
  ];
  const { leaks } = house;
  const links = [
    ...linksOf(model, at, ducts, (t) => place(t.room)),
    ...model.sections.flatMap((x, i) => holesOf(x, open.sections[x.id] ?? 0, Math.abs(open.ends[i] ?? 0), sky)),
    ...rooms.flatMap((r) => [...doorLink(r, density), ...sky.leaks(roomNode(r.id), r.leak, leaks?.exponent, r.places)]),
    ...sky.leaks(hall, leaks?.open ?? 0, leaks?.exponent, leaks?.places),
  ];
  return { nodes, links };
}

function hallNode({ leaks, exhaust }: HouseAir, behind: ReadonlySet<string>): NetworkNode {
  if (!leaks) return { id: hall, pressure: 0 };
  return { id: hall, outflow: Object.entries(exhaust).reduce((a, [room, q]) => (behind.has(room) ? a : a + q), 0) };
}

/** Holes of a section, at its far end, that pass its share at the pressure there. */
function holesOf(x: DuctSection, carried: number, pressure: number, sky: Around): NetworkLink[] {
  const lost = carried * x.leakage;
  if (!(lost > 0 && pressure > 0)) return [];
  const outside = x.place === 'inside' ? hall : sky[x.place];
  const [from, to] = x.side === 'supply' ? [end(x.id), outside] : [outside, end(x.id)];
  const exponent = 1 / usualExponent;
  return [{ id: `holes ${x.id}`, kind: 'power', from, to, coefficient: pressure / lost ** exponent, exponent }];
}

const doorLink = ({ id, opening }: ShutRoom, density: number): NetworkLink[] =>
  opening > hardlyAny
    ? [
        {
          id: doorOf(id),
          kind: 'power',
          from: roomNode(id),
          to: hall,
          coefficient: density / 2 / (dischargeCoefficient * opening) ** 2,
          exponent: 2,
        },
      ]
    : [];
