import { inOrder, type Project, type Resolved, type ResolvedProject } from '@kneewall/project';
import type { BlowerModel, BlowerTable } from '../equipment/result.ts';
import {
  compressionFactor,
  dischargeCoefficient,
  type FittingShape,
  fittingLoss,
  flexibleRoughness,
  hydraulicDiameter,
} from '../physics/flow/index.ts';
import { unresolved } from '../plan/outcome.ts';
import type { Scenario } from '../plan/scenario.ts';
import type { AirModel, DuctSection, Terminal } from './ductwork.ts';
import { sagLoss } from './sagLoss.ts';
import { type UnitEnd, unitEndLoss } from './unitEnd.ts';

export type Ducts = ResolvedProject['routes']['ducts'];
type SectionInput = Resolved<NonNullable<NonNullable<NonNullable<Project['routes']>['ducts']>['sections']>>[string];

/** m, for Colebrook: metal with seams, board and flexible pulled tight. Source: `air.roughness`. */
export const roughness = { flexible: flexibleRoughness, round: 0.00009, rectangular: 0.00009, board: 0.0009 } as const;

/** By section, what it meets at the unit. */
export type UnitEndsOf = (s: Scenario) => Readonly<Record<string, UnitEnd>>;
const noneKnown: UnitEndsOf = () => ({});

/**
 * Ducts, registers, filter and blower in plain numbers, and the pieces between the unit and its ducts where `unitEnds` knows
 * them. Ends the enclosing attempt where something is missing or makes no tree.
 */
export function airModel(
  ducts: Ducts,
  blower: BlowerModel,
  pressure: number,
  s: Scenario,
  unitEnds = noneKnown,
): AirModel {
  const order = s.part('order', () => orderOf(ducts));
  const sections = order.sections.map(([id, x, part]) => s.part(part, (own) => sectionOf(id, x, own, unitEnds)));
  // Which way leads where is drawn, and the same in every reading.
  const ids = s.part('ways', () => checkedWays(sections));
  return {
    sections,
    terminals: order.terminals.map(([id, t, part]) => {
      if (t.section === undefined || !ids.has(t.section))
        return unresolved('missing', `routes.ducts.terminals.${id}.section`);
      return s.part(part, (own) => terminalOf(id, t, own));
    }),
    filter: filterOf(ducts, blower, s),
    added: s.of(ducts.handler.coil),
    blower: tableOf(ducts, blower),
    pressure,
  };
}

/** Sections and terminals in the order they are drawn in, each with its name as a piece of a reading. */
const orderOf = ({ sections, terminals }: Ducts) => ({
  sections: inOrder(sections).map(([id, x]) => [id, x, `section ${id}`] as const),
  terminals: inOrder(terminals).map(([id, t]) => [id, t, `terminal ${id}`] as const),
});

const place = (id: string): string => `routes.ducts.sections.${id}`;

function sectionOf(id: string, x: SectionInput, s: Scenario, unitEnds: UnitEndsOf): DuctSection {
  const kind = s.choice(x.kind);
  const shape = shapeOf(id, x, s);
  const length = s.of(x.length);
  const compression = kind === 'flexible' ? s.of(x.compression) : 0;
  const sag = kind === 'flexible' ? (s.maybe(x.sag) ?? 0) : 0;
  const losses = inOrder(x.fittings).reduce((sum, [, f]) => sum + lossOf(f, s) * s.of(f.count), 0);
  const hung = sagLoss(place(id), sag, s.of(x.supports), length, s);
  const side = s.choice(x.side);
  const unitEnd = x.from === undefined ? unitEnds(s)[id] : undefined;
  const met = unitEnd ? unitEndLoss(unitEnd, side, shape.size, shape.area) : 0;
  return {
    id,
    name: x.name ?? id,
    side,
    ...(x.from === undefined ? {} : { from: x.from }),
    kind,
    diameter: shape.diameter,
    area: shape.area,
    length,
    surface: shape.perimeter * length,
    roughness: roughness[kind],
    frictionFactor: kind === 'flexible' ? compressionFactor(compression, shape.diameter) : 1,
    lossCoefficient: losses + hung + met,
    ...(hung > 0 ? { sagLoss: hung } : {}),
    ...(unitEnd ? { unitEnd: { ...unitEnd, loss: met } } : {}),
    insulation: s.of(x.insulation),
    leakage: s.of(x.leakage),
    place: s.choice(x.place),
    supports: s.of(x.supports),
  };
}

type FittingInput = SectionInput['fittings'][string];

/** What of a fitting's shape is entered. */
export function fittingShape(f: FittingInput, s: Scenario): FittingShape {
  const [radius, angle] = [s.maybe(f.radius), s.maybe(f.angle)];
  return { ...(radius === undefined ? {} : { radius }), ...(angle === undefined ? {} : { angle }) };
}

/** A fitting's coefficient; a radius or an angle that no published table covers is named by its place. */
function lossOf(f: FittingInput, s: Scenario): number {
  const looked = fittingLoss(s.choice(f.kind), fittingShape(f, s));
  if (looked.ok) return looked.value;
  return unresolved('out-of-range', looked.input.startsWith('angle') ? f.angle.path : f.radius.path);
}

/** A diameter, or width and height. */
function shapeOf(id: string, x: SectionInput, s: Scenario) {
  const d = s.maybe(x.diameter);
  if (d !== undefined && d > 0)
    return { size: { diameter: d }, diameter: d, area: (Math.PI * d * d) / 4, perimeter: Math.PI * d };
  const [width, height] = [s.maybe(x.width), s.maybe(x.height)];
  if (width === undefined || height === undefined || width * height <= 0)
    return unresolved('missing', `${place(id)}.diameter`);
  return {
    size: { width, height },
    diameter: hydraulicDiameter(width, height),
    area: width * height,
    perimeter: 2 * (width + height),
  };
}

/** The names of all sections. Every one has to lead back to the air handler on its own side. */
function checkedWays(sections: readonly DuctSection[]): ReadonlySet<string> {
  const byId = new Map(sections.map((x) => [x.id, x]));
  // From where a section was first come by: what an earlier way led through leads back.
  const passed = new Map<DuctSection, DuctSection>();
  for (const start of sections)
    for (let at: DuctSection | undefined = start; at; ) {
      const before = passed.get(at);
      if (before === start) unresolved('out-of-range', `${place(at.id)}.from`);
      if (before || at.from === undefined) break;
      passed.set(at, start);
      const next = byId.get(at.from);
      if (!next || next.side !== at.side) unresolved('missing', `${place(at.id)}.from`);
      at = next;
    }
  return new Set(byId.keys());
}

export type TerminalInput = Ducts['terminals'][string];

/** A register or grille in plain numbers. Ends the enclosing attempt where it has no duct, no room or no size. */
export function terminalOf(id: string, t: TerminalInput, s: Scenario): Terminal {
  const path = `routes.ducts.terminals.${id}`;
  const faceArea = s.of(t.width) * s.of(t.height);
  const freeArea = faceArea * s.of(t.freeShare);
  return {
    id,
    name: t.name ?? id,
    section: t.section ?? unresolved('missing', `${path}.section`),
    room: t.room ?? unresolved('missing', `${path}.room`),
    faceArea,
    freeArea,
    // One of no opening has none that is a number; it is told as a fault of its place.
    resistance: freeArea > 0 ? resistanceOf(t, freeArea, s) : 0,
  };
}

/** From the sheet where it states a pressure at a flow, else as an opening of the free area in standard air. */
function resistanceOf(t: TerminalInput, freeArea: number, s: Scenario): number {
  const [pressure, flow] = [s.maybe(t.pressure), s.maybe(t.pressureFlow)];
  if (pressure !== undefined && flow !== undefined && flow > 0) return pressure / flow ** 2;
  return 1.204 / 2 / (dischargeCoefficient * freeArea) ** 2;
}

function filterOf(ducts: Ducts, blower: BlowerModel, s: Scenario): AirModel['filter'] {
  const { filter } = ducts;
  return {
    pressure: blower.filterIncluded ? 0 : s.of(filter.pressure),
    velocity: s.of(filter.pressureVelocity),
    exponent: s.of(filter.growth),
    area: s.of(filter.width) * s.of(filter.height),
  };
}

/** The setting named, else the one that moves most air. */
function tableOf(ducts: Ducts, blower: BlowerModel): BlowerTable {
  const usable = blower.tables.filter((t) => t.points.length >= 2);
  const named = usable.find((t) => t.setting === ducts.handler.setting);
  const most = (t: BlowerTable) => t.points.at(-1)?.flow ?? 0;
  const [first] = [...usable].sort((a, b) => most(b) - most(a));
  return named ?? first ?? unresolved('missing', 'candidates.*.blower.speeds');
}

/** On which side of the unit a section lies. */
export const sideOf = (model: AirModel, section: string): 'supply' | 'return' =>
  model.sections.find((x) => x.id === section)?.side ?? 'supply';
