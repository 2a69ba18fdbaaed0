import type { Air } from '../../physics/flow/index.ts';
import type { DuctSection } from '../result.ts';
import { labourOf, moneyOf } from './effort.ts';
import { bendsAmong, type Fitting } from './fittingLoss.ts';
import { geometryOf, outerSize } from './geometry.ts';
import { reshaped, sectionLoss, shapeOf } from './reshape.ts';
import type { BrokenLimit, SizingOption } from './spec.ts';
import { type DuctKind, type DuctShape, shapeId, stockOf } from './stock.ts';
import { type DuctRole, type VelocityLimits, velocityMost } from './velocity.ts';

/** What a section has to pass through, m over the insulation: joist bay, headroom, space between rafters. */
export type Space = { readonly depth?: number; readonly width?: number };

export type DuctOption = SizingOption & {
  readonly shape: DuctShape;
  /** How many side by side; more than one only to say that it would help. */
  readonly runs: number;
  /** m/s. */
  readonly velocity: number;
};

/** One section at its wanted flow, m³/s of the air in it. */
export type SectionNeed = {
  readonly section: DuctSection;
  readonly fittings: readonly Fitting[] | undefined;
  readonly flow: number;
  readonly role: DuctRole;
  readonly air: Air;
  readonly kinds: readonly DuctKind[];
  readonly space: Space;
  readonly limits: VelocityLimits;
  /** Entered money per metre by option id. */
  readonly prices: Readonly<Record<string, number>>;
};

/** Every stocked size of the kinds allowed, with what it loses and costs and the limits it would break; then each twice side by side. */
export function candidates(need: SectionNeed): DuctOption[] {
  const shapes = need.kinds.flatMap(stockOf);
  return [...shapes.map((s) => optionOf(need, s, 1)), ...shapes.map((s) => optionOf(need, s, 2))];
}

function optionOf(need: SectionNeed, shape: DuctShape, runs: number): DuctOption {
  const x = reshaped(need.section, shape, need.fittings);
  const one = shapeId(shape);
  const run = {
    kind: shape.kind,
    length: x.length,
    perimeter: geometryOf(shape).perimeter,
    bends: bendsAmong(need.fittings ?? []),
  };
  return {
    ...judged(need, x, shape, runs),
    id: runs === 1 ? one : `${runs} x ${one}`,
    money: runs * moneyOf(run, need.prices[one]),
    labour: runs * labourOf(run),
  };
}

/** The section as it is drawn or bought: judged, with whatever limits it breaks, at no further cost. */
export function asItIs(need: SectionNeed): DuctOption {
  const shape = shapeOf(need.section);
  return { ...judged(need, need.section, shape, 1), id: shapeId(shape), money: 0, labour: 0 };
}

function judged(need: SectionNeed, x: DuctSection, shape: DuctShape, runs: number) {
  const flow = need.flow / runs;
  const velocity = flow / x.area;
  const breaks = broken(need, shape, velocity, runs);
  return { loss: sectionLoss(x, flow, need.air), ...(breaks.length > 0 ? { breaks } : {}), shape, runs, velocity };
}

/** Limits are compared to a micrometre and a micrometre a second: none hangs on the last bit. */
const slightly = 1e-6;

function broken(need: SectionNeed, shape: DuctShape, velocity: number, runs: number): BrokenLimit[] {
  const outer = outerSize(shape, need.section.insulation);
  const limit = (name: BrokenLimit['limit'], value: number, most: number | undefined): BrokenLimit[] =>
    most !== undefined && value > most + slightly ? [{ limit: name, value, most }] : [];
  return [
    ...limit('depth', outer.depth, need.space.depth),
    ...limit('width', outer.width, need.space.width),
    ...limit('velocity', velocity, velocityMost(need.limits, need.role, shape.kind)),
    ...limit('runs', runs, 1),
  ];
}
