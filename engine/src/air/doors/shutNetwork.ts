import { airDensity } from '../../physics/air/index.ts';
import { dischargeCoefficient } from '../../physics/flow/index.ts';
import { usualExponent } from '../../physics/infiltration/index.ts';
import type { NetworkLink, NetworkNode, NetworkSpec } from '../../physics/network/index.ts';
import type { AirModel, DuctSection } from '../ductwork.ts';
import type { PlacedFlows } from '../flows.ts';
import { type AirAt, ductLink, end, networkParts } from '../networkParts.ts';
import { sameOnes } from '../sameOnes.ts';
import type { HouseAir, LeakPlace, ShutRoom } from './houseAir.ts';
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
 * floor. For like systems one after the other: what is made of the same as the last time is the same object.
 */
export function shutNetworks(): (model: AirModel, at: AirAt, open: PlacedFlows, house: HouseAir) => NetworkSpec {
  const ducts = networkParts(ductLink);
  const [skies, leaky, doors] = [sameOnes<Around>(), sameOnes<NetworkLink[]>(), sameOnes<NetworkLink[]>()];
  return (model, at, open, house) => {
    const { ends, links } = ducts(model, at);
    const density = airDensity(at.returnTemperature, model.pressure);
    const rooms = roomsApart(model, house);
    const behind = new Set(rooms.map((r) => r.id));
    const sky = skies(0, [house.leaks?.places, house.top, house.weather, ...house.rooms.map((r) => r.places)], () =>
      around(house),
    );
    const leaksOf = (place: number, node: string, leak: number, places?: readonly LeakPlace[]): NetworkLink[] => {
      const exponent = house.leaks?.exponent;
      return leaky(place, [sky, node, leak, exponent, places], () => sky.leaks(node, leak, exponent, places));
    };
    const roomLinks = (r: ShutRoom, i: number): NetworkLink[] => [
      ...doors(i, [r.id, r.opening, density], () => doorLink(r, density)),
      ...leaksOf(i, roomNode(r.id), r.leak, r.places),
    ];
    return {
      nodes: [
        ...ends,
        hallNode(house, behind),
        ...rooms.map((r) => ({ id: roomNode(r.id), outflow: house.exhaust[r.id] ?? 0 })),
        ...sky.nodes,
      ],
      links: [
        ...links((t) => (behind.has(t.room) ? roomNode(t.room) : hall)),
        ...model.sections.flatMap((x, i) => holesOf(x, open.start[i] ?? 0, Math.abs(open.ends[i] ?? 0), sky)),
        ...rooms.flatMap(roomLinks),
        ...leaksOf(rooms.length, hall, house.leaks?.open ?? 0, house.leaks?.places),
      ],
    };
  };
}

/** Rooms with a node of their own: all behind shut doors but those that no air gets into or out of. */
function roomsApart({ terminals }: AirModel, { rooms }: HouseAir): readonly ShutRoom[] {
  const fed = new Set(terminals.map((t) => t.room));
  return rooms.filter((r) => r.opening > hardlyAny || r.leak > hardlyAny || fed.has(r.id));
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
