import { airDensity, airViscosity } from '../../physics/air/index.ts';
import type { AirModel, DuctSection } from '../ductwork.ts';
import { nominalAir } from '../flows.ts';
import { type AirAt, standardDensity } from '../networkParts.ts';
import type { Asked, Space } from './asked.ts';
import {
  allowedOptions,
  asBought,
  asDrawn,
  type DuctOption,
  everyOption,
  insteadOfBought,
  type SectionNeed,
  withOwn,
} from './candidates.ts';
import type { Fitting } from './fittingLoss.ts';
import { geometryOf } from './geometry.ts';
import { passing } from './passing.ts';
import { type PriceBook, priceBook } from './priceBook.ts';
import type { SizingSection, SizingSpec } from './spec.ts';
import { type DuctShape, stockOf } from './stock.ts';
import { type UnitPressure, unitPressure } from './unitPressure.ts';
import { type DuctRole, quietVelocities, type VelocityLimits } from './velocity.ts';
import { wantedFlows } from './wantedFlows.ts';

export type DuctSizingInput = Asked & {
  readonly model: AirModel;
  /** By section; a section without an entry keeps its drawn sum of losses. */
  readonly fittings: Readonly<Record<string, readonly Fitting[]>>;
  /** m³/s each room is to get, and all the blower is to move: rooms get their share of it. */
  readonly rooms: Readonly<Record<string, number>>;
  readonly flow: number;
  /** Pa, from the unit's sheet, filter included. */
  readonly staticMost?: number;
  /** Sections that are ordered, arrived or fitted: judged, never resized. By section, the item. */
  readonly bought: Readonly<Record<string, string>>;
  /** Sections that are there already and may be made new: kept at their size they cost nothing. */
  readonly there?: readonly string[];
  readonly limits?: VelocityLimits;
  readonly at?: AirAt;
};

export type SectionSizing = {
  readonly id: string;
  readonly name: string;
  readonly role: DuctRole;
  /** m³/s of the air in it. */
  readonly flow: number;
  /** As it is drawn, with the limits it breaks. */
  readonly drawn: DuctOption;
  /** Why it is not resized: bought, or a board box at the unit, whose size follows the unit's port and the collars. */
  readonly kept?: 'bought' | 'box';
  /** It is there already: its own size costs nothing, any other is a new duct whole, and the old one comes out. */
  readonly there?: true;
  /** What it has to pass, and how many of the sizes to be had go in; the largest of them by open area. */
  readonly space?: Space & { readonly goIn: number; readonly of: number; readonly largest?: DuctShape };
  readonly options: readonly DuctOption[];
};

export type SetUp = {
  readonly sections: readonly SectionSizing[];
  readonly pressure: UnitPressure;
  readonly spec: SizingSpec;
};

/** Which options there are: for a section that may change, and besides itself for one that is bought. */
export type OptionsOf = {
  readonly free: (need: SectionNeed) => DuctOption[];
  readonly bought: (need: SectionNeed) => DuctOption[];
};
/** Within all limits; or with the limits broken, to see which would have to give. */
const withinLimits: OptionsOf = { free: allowedOptions, bought: () => [] };
export const limitsLifted: OptionsOf = { free: everyOption, bought: insteadOfBought };

/** The task at a flow of the blower, in plain numbers. */
export function setUp(input: DuctSizingInput, flow: number, options = withinLimits): SetUp {
  const { model, at = nominalAir } = input;
  const flows = wantedFlows(model, input.rooms, flow);
  const pressure = unitPressure(model, at, flow, input.staticMost);
  const book = priceBook(
    input.prices ?? {},
    kindsAll.flatMap((kind) => stockOf(kind, input.stock)),
  );
  const sections = model.sections.map((x) => sectionSizing({ input, book, options }, x, flows.sections[x.id] ?? 0));
  const spec: SizingSpec = {
    sections: model.sections.map((x, i): SizingSection => {
      const s = sections[i];
      return {
        id: x.id,
        side: x.side,
        ...(x.from === undefined ? {} : { from: x.from }),
        end: hardestRegister(model, x, flows.terminals, at),
        ...(s?.kept ? { fixed: true } : {}),
        options: s?.options ?? [],
      };
    }),
    budget: pressure.left,
    goal: input.goal ?? 'money',
  };
  return { sections, pressure, spec };
}

/** Air in the ducts of a side, and how much faster it moves there than at the blower. */
function airOf(model: AirModel, side: DuctSection['side'], at: AirAt) {
  const temperature = side === 'supply' ? at.supplyTemperature : at.returnTemperature;
  const density = airDensity(temperature, model.pressure);
  return {
    air: { density, viscosity: airViscosity(temperature) },
    faster: airDensity(at.returnTemperature, model.pressure) / density,
  };
}

const kindsAll = ['flexible', 'round', 'rectangular', 'board'] as const;

type Task = { readonly input: DuctSizingInput; readonly book: PriceBook; readonly options: OptionsOf };

function sectionSizing({ input, book, options }: Task, x: DuctSection, flow: number): SectionSizing {
  const { model, at = nominalAir } = input;
  const { air, faster } = airOf(model, x.side, at);
  const role =
    x.side === 'return' ? 'return' : model.sections.some((y) => y.from === x.id) ? 'supply trunk' : 'supply branch';
  const kept = input.bought[x.id] !== undefined ? 'bought' : isBox(model, x) ? 'box' : undefined;
  const need: SectionNeed = {
    section: x,
    fittings: input.fittings[x.id],
    flow: flow * faster,
    role,
    air,
    shapes: (input.kinds?.[x.id] ?? [x.kind]).flatMap((kind) => stockOf(kind, input.stock)),
    space: input.spaces?.[x.id] ?? {},
    limits: input.limits ?? quietVelocities,
    book,
    joints: input.joints,
  };
  const there = !kept && (input.there?.includes(x.id) ?? false);
  const free = there ? withOwn(need, options.free(need)) : options.free(need);
  return {
    id: x.id,
    name: x.name,
    role,
    flow: flow * faster,
    drawn: there ? asBought(need) : asDrawn(need),
    ...(kept ? { kept } : {}),
    ...(there ? { there } : {}),
    ...(input.spaces?.[x.id] ? { space: goingIn(need) } : {}),
    options: kept ? [asBought(need), ...(kept === 'bought' ? options.bought(need) : [])] : free,
  };
}

function goingIn({ shapes, space, section }: SectionNeed): NonNullable<SectionSizing['space']> {
  const able = shapes.filter((shape) => passing(shape, section.insulation, space).breaks.length === 0);
  const area = (shape: DuctShape): number => geometryOf(shape).area;
  const [largest] = [...able].sort((a, b) => area(b) - area(a));
  return { ...space, goIn: able.length, of: shapes.length, ...(largest ? { largest } : {}) };
}

/** A plenum: board right at the unit with ducts on it. */
const isBox = (model: AirModel, x: DuctSection): boolean =>
  x.kind === 'board' && x.from === undefined && model.sections.some((y) => y.from === x.id);

/** Pa of the hardest register or grille at a section's end. */
function hardestRegister(model: AirModel, x: DuctSection, flows: Readonly<Record<string, number>>, at: AirAt): number {
  const { air, faster } = airOf(model, x.side, at);
  return model.terminals.reduce((most, t) => {
    if (t.section !== x.id) return most;
    const flow = (flows[t.id] ?? 0) * faster;
    return Math.max(most, ((t.resistance * air.density) / standardDensity) * flow * flow);
  }, 0);
}
