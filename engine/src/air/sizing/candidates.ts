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

/** Every stocked size of the kinds allowed that breaks no limit, with what it loses and costs. */
export const allowedOptions = (need: SectionNeed): DuctOption[] =>
  need.kinds.flatMap(stockOf).flatMap((shape) => (broken(need, shape, 1).length > 0 ? [] : [optionOf(need, shape, 1)]));

/** Every stocked size with the limits it breaks, once and twice side by side: to see which limit would have to give. */
export function everyOption(need: SectionNeed): DuctOption[] {
  const shapes = need.kinds.flatMap(stockOf);
  return [1, 2].flatMap((runs) => shapes.map((shape) => optionOf(need, shape, runs)));
}

function optionOf(need: SectionNeed, shape: DuctShape, runs: number): DuctOption {
  return priced(need, judged(need, reshaped(need.section, shape, need.fittings), shape, runs));
}

/** The section as it is drawn: judged, whatever limits it breaks. */
export function asDrawn(need: SectionNeed): DuctOption {
  return priced(need, judged(need, need.section, shapeOf(need.section), 1));
}

/** The same where it is bought: it costs nothing more. */
export const asBought = (need: SectionNeed): DuctOption => ({ ...asDrawn(need), money: 0, labour: 0 });

/** What could stand in its place: no choice, only a way out where nothing fits. */
export const insteadOfBought = (need: SectionNeed): DuctOption[] =>
  allowedOptions(need).map((o) => ({ ...o, breaks: [{ limit: 'bought', value: 2, most: 1 }] }));

type Judged = Omit<DuctOption, 'money' | 'labour'>;

function judged(need: SectionNeed, x: DuctSection, shape: DuctShape, runs: number): Judged {
  const flow = need.flow / runs;
  const breaks = broken(need, shape, runs);
  const one = shapeId(shape);
  return {
    id: runs === 1 ? one : `${runs} x ${one}`,
    loss: sectionLoss(x, flow, need.air),
    ...(breaks.length > 0 ? { breaks } : {}),
    shape,
    runs,
    velocity: flow / x.area,
  };
}

function priced(need: SectionNeed, option: Judged): DuctOption {
  const { shape, runs } = option;
  const run = {
    kind: shape.kind,
    length: need.section.length,
    perimeter: geometryOf(shape).perimeter,
    bends: bendsAmong(need.fittings ?? []),
  };
  return { ...option, money: runs * moneyOf(run, need.prices[shapeId(shape)]), labour: runs * labourOf(run) };
}

/** Limits are compared to a micrometre and a micrometre a second: none hangs on the last bit. */
const slightly = 1e-6;

function broken(need: SectionNeed, shape: DuctShape, runs: number): BrokenLimit[] {
  const outer = outerSize(shape, need.section.insulation);
  const limit = (name: BrokenLimit['limit'], value: number, most: number | undefined): BrokenLimit[] =>
    most !== undefined && value > most + slightly ? [{ limit: name, value, most }] : [];
  return [
    ...limit('depth', outer.depth, need.space.depth),
    ...limit('width', outer.width, need.space.width),
    ...limit('velocity', need.flow / runs / geometryOf(shape).area, velocityMost(need.limits, need.role, shape.kind)),
    ...limit('runs', runs, 1),
  ];
}
