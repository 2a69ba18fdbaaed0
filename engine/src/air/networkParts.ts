import { airDensity, airViscosity } from '../physics/air/index.ts';
import type { NetworkLink, NetworkNode } from '../physics/network/index.ts';
import type { AirModel, DuctSection, Terminal } from './result.ts';
import { sameOnes } from './sameOnes.ts';

export type AirAt = { readonly supplyTemperature: number; readonly returnTemperature: number };

export const end = (id: string): string => `end ${id}`;

/** The node at which a section joins the air handler or the section nearer to it. */
const near = (x: DuctSection): string =>
  x.from === undefined ? (x.side === 'supply' ? 'supply' : 'before filter') : end(x.from);

const unitNodes: readonly NetworkNode[] = [{ id: 'supply' }, { id: 'return' }, { id: 'before filter' }];
/** All rooms as one, the doors open. */
export const rooms: NetworkNode = { id: 'room', pressure: 0 };

type SectionLink = (x: DuctSection, temperature: number, pressure: number, reference: number) => NetworkLink;

/** Unit and ducts as parts of a network. */
type NetworkParts = {
  /** Nodes of the unit and at the far ends of all sections, in this order. */
  readonly ends: readonly NetworkNode[];
  /** Sections, terminals, filter, blower, in this order; terminals lead into the node that `roomOf` names. */
  readonly links: (roomOf?: (t: Terminal) => string) => readonly NetworkLink[];
};

/** Makes these parts for like systems one after the other; one that is made of the same as the last is the same object. */
export function networkParts(link: SectionLink): (model: AirModel, at: AirAt) => NetworkParts {
  const [ends, ducts, terminals] = [sameOnes<NetworkNode>(), sameOnes<NetworkLink>(), sameOnes<NetworkLink>()];
  const unit = sameOnes<readonly NetworkLink[]>();
  return (model, at) => {
    const { sections, pressure } = model;
    const air = `${at.supplyTemperature} ${at.returnTemperature} ${pressure}`;
    const reference = airDensity(at.returnTemperature, pressure);
    const supply = airDensity(at.supplyTemperature, pressure);
    const returns = new Set(sections.flatMap((x) => (x.side === 'return' ? [x.id] : [])));
    return {
      ends: [...unitNodes, ...sections.map((x, i) => ends(i, [x.id], () => ({ id: end(x.id) })))],
      links: (roomOf = () => rooms.id) => [
        ...sections.map((x, i) =>
          ducts(i, [x, air], () =>
            link(x, x.side === 'supply' ? at.supplyTemperature : at.returnTemperature, pressure, reference),
          ),
        ),
        ...model.terminals.map((t, i) => {
          const [blows, room] = [!returns.has(t.section), roomOf(t)];
          return terminals(i, [t, air, blows, room], () => terminalLink(t, blows, room, supply, reference));
        }),
        ...unit(0, [model.blower, model.added, ...Object.values(model.filter), reference], () =>
          unitLinks(model, reference / standardDensity),
        ),
      ],
    };
  };
}

function terminalLink(t: Terminal, blows: boolean, room: string, supply: number, reference: number): NetworkLink {
  const density = blows ? supply : reference;
  const coefficient = ((t.resistance * density) / standardDensity) * (reference / density) ** 2;
  const [from, to] = blows ? [end(t.section), room] : [room, end(t.section)];
  return { id: `terminal ${t.id}`, kind: 'power', from, to, coefficient, exponent: 2 };
}

/** Supply air leaks out before the far end, air leaks into a return beyond its far end: a share of what it carries. */
export const shareLink: SectionLink = (x, temperature, pressure, reference) => {
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
