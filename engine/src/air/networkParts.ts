import { airDensity, airViscosity } from '../physics/air/index.ts';
import type { NetworkLink, NetworkNode } from '../physics/network/index.ts';
import type { AirModel, DuctSection, Terminal } from './ductwork.ts';
import { sameOnes } from './sameOnes.ts';

export type AirAt = { readonly supplyTemperature: number; readonly returnTemperature: number };

export const end = (id: string): string => `end ${id}`;

/** The node at which a section joins the air handler or the section nearer to it. */
const near = (x: DuctSection): string =>
  x.from === undefined ? (x.side === 'supply' ? 'supply' : 'before filter') : end(x.from);

const unitNodes: readonly NetworkNode[] = [{ id: 'supply' }, { id: 'return' }, { id: 'before filter' }];
/** All rooms as one, the doors open. */
export const rooms: NetworkNode = { id: 'room', pressure: 0 };

/** The air in one side's ducts, kg/m³ and Pa s, and the density of the air that flows are counted in. */
type SideAir = { readonly density: number; readonly viscosity: number; readonly reference: number };
type Air = { readonly supply: SideAir; readonly return: SideAir };

type SectionLink = (x: DuctSection, air: SideAir) => NetworkLink;

/** Unit and ducts as parts of a network. */
type NetworkParts = {
  /** Nodes of the unit and at the far ends of all sections, in this order. */
  readonly ends: readonly NetworkNode[];
  /** Sections, terminals, filter, blower, in this order; terminals lead into the node that `roomOf` names. */
  readonly links: (roomOf?: (t: Terminal) => string) => readonly NetworkLink[];
};

/** Makes these parts for like systems one after the other; one that is made of the same as the last is the same object. */
export function networkParts(link: SectionLink): (model: AirModel, at: AirAt) => NetworkParts {
  const [airs, unit] = [sameOnes<Air>(), sameOnes<readonly NetworkLink[]>()];
  const [ducts, terminals] = [ductLinks(link), terminalLinks()];
  let ends: readonly NetworkNode[] = unitNodes;
  return (model, at) => {
    const { sections, pressure } = model;
    const air = airs(0, [at.supplyTemperature, at.returnTemperature, pressure], () => airOf(at, pressure));
    const { reference } = air.return;
    ends = endsOf(sections, ends);
    return {
      ends,
      links: (roomOf = inRooms) => [
        ...ducts(sections, air),
        ...terminals(model, air, roomOf),
        ...unit(0, [model.blower, model.added, ...Object.values(model.filter), reference], () =>
          unitLinks(model, reference / standardDensity),
        ),
      ],
    };
  };
}

const inRooms = (): string => rooms.id;

function airOf({ supplyTemperature, returnTemperature }: AirAt, pressure: number): Air {
  const reference = airDensity(returnTemperature, pressure);
  const side = (t: number): SideAir => ({ density: airDensity(t, pressure), viscosity: airViscosity(t), reference });
  return { supply: side(supplyTemperature), return: side(returnTemperature) };
}

/** Nodes of the unit and at the far ends of the sections: the last ones where the sections have the same names. */
function endsOf(sections: readonly DuctSection[], last: readonly NetworkNode[]): readonly NetworkNode[] {
  const first = unitNodes.length;
  const same = last.length === first + sections.length && sections.every((x, i) => last[first + i]?.id === end(x.id));
  return same ? last : [...unitNodes, ...sections.map((x) => ({ id: end(x.id) }))];
}

/** Links of ducts; those whose section and air are the objects of the last time are themselves those of the last time. */
function ductLinks(link: SectionLink): (sections: readonly DuctSection[], air: Air) => readonly NetworkLink[] {
  let [of, made, through]: [readonly DuctSection[], readonly NetworkLink[], Air | undefined] = [[], [], undefined];
  return (sections, air) => {
    const still = air === through;
    const [before, links] = [of, made];
    made = sections.map((x, i) => (still && before[i] === x && links[i]) || link(x, air[x.side]));
    [of, through] = [sections, air];
    return made;
  };
}

/** The same for terminals and the rooms they lead into. */
function terminalLinks(): (model: AirModel, air: Air, roomOf: (t: Terminal) => string) => readonly NetworkLink[] {
  type Of = { readonly t: Terminal; readonly blows: boolean; readonly room: string; readonly link: NetworkLink };
  let [made, through]: [readonly Of[], Air | undefined] = [[], undefined];
  return ({ sections, terminals }, air, roomOf) => {
    const [still, last] = [air === through, made];
    const returns = new Set<string>();
    for (const x of sections) if (x.side === 'return') returns.add(x.id);
    made = terminals.map((t, i): Of => {
      const [blows, room, was] = [!returns.has(t.section), roomOf(t), last[i]];
      if (still && was && was.t === t && was.blows === blows && was.room === room) return was;
      return { t, blows, room, link: terminalLink(t, blows, room, air.supply.density, air.return.reference) };
    });
    through = air;
    return made.map((x) => x.link);
  };
}

function terminalLink(t: Terminal, blows: boolean, room: string, supply: number, reference: number): NetworkLink {
  const density = blows ? supply : reference;
  const coefficient = ((t.resistance * density) / standardDensity) * (reference / density) ** 2;
  const [from, to] = blows ? [end(t.section), room] : [room, end(t.section)];
  return { id: `terminal ${t.id}`, kind: 'power', from, to, coefficient, exponent: 2 };
}

/** Supply air leaks out before the far end, air leaks into a return beyond its far end: a share of what it carries. */
export const shareLink: SectionLink = (x, air) => linkOf(x, air, 1 - x.leakage);

/** A duct from which nothing is lost on the way. */
export const ductLink: SectionLink = (x, air) => linkOf(x, air, 1);

/** Velocity belongs to the air in the duct, flow to the blower's: the area is scaled by their densities. */
function linkOf(x: DuctSection, { density, viscosity, reference }: SideAir, kept: number): NetworkLink {
  const supply = x.side === 'supply';
  return {
    id: `section ${x.id}`,
    kind: 'duct',
    from: supply ? near(x) : end(x.id),
    to: supply ? end(x.id) : near(x),
    leave: supply ? 1 : kept,
    arrive: supply ? kept : 1,
    length: x.length,
    diameter: x.diameter,
    area: (x.area * density) / reference,
    roughness: x.roughness,
    factor: x.frictionFactor,
    loss: x.lossCoefficient,
    density,
    viscosity,
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
