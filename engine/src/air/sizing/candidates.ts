import type { Range } from '@kneewall/project';
import type { Air } from '../../physics/flow/index.ts';
import type { DuctSection } from '../ductwork.ts';
import type { Asked, Space } from './asked.ts';
import { labourOf, moneyOf } from './effort.ts';
import { bendsAmong, type Fitting } from './fittingLoss.ts';
import { geometryOf } from './geometry.ts';
import { over, passing } from './passing.ts';
import type { PriceBook } from './priceBook.ts';
import { reshaped, sectionLoss, shapeOf, slackIn } from './reshape.ts';
import type { BrokenLimit, SizingOption } from './spec.ts';
import { type DuctShape, shapeId } from './stock.ts';
import { type DuctRole, type VelocityLimits, velocityMost } from './velocity.ts';

export type DuctOption = SizingOption & {
  readonly shape: DuctShape;
  /** How many side by side; more than one only to say that it would help. */
  readonly runs: number;
  /** m/s. */
  readonly velocity: number;
  /** A rectangular duct that only goes in standing on its narrow side. */
  readonly onEdge?: true;
  /** Money and seconds at the ends of what was entered as a range. */
  readonly ranges?: { readonly money: Range; readonly labour: Range };
  /** Its price is a stand-in. */
  readonly standIn?: true;
};

/** One section at its wanted flow, m³/s of the air in it. */
export type SectionNeed = {
  readonly section: DuctSection;
  readonly fittings: readonly Fitting[] | undefined;
  readonly flow: number;
  readonly role: DuctRole;
  readonly air: Air;
  /** Every size to be had of the kinds it may become. */
  readonly shapes: readonly DuctShape[];
  readonly space: Space;
  readonly limits: VelocityLimits;
  readonly book: PriceBook;
  readonly joints: Asked['joints'];
};

/** Every size to be had that breaks no limit, with what it loses and costs. */
export const allowedOptions = (need: SectionNeed): DuctOption[] =>
  need.shapes.flatMap((shape) => (broken(need, shape, 1).length > 0 ? [] : [optionOf(need, shape, 1)]));

/** Every size with the limits it breaks, once and twice side by side: to see which limit would have to give. */
export function everyOption(need: SectionNeed): DuctOption[] {
  return [1, 2].flatMap((runs) => need.shapes.map((shape) => optionOf(need, shape, runs)));
}

function optionOf(need: SectionNeed, shape: DuctShape, runs: number): DuctOption {
  return priced(need, judged(need, reshaped(need.section, shape, need.fittings), shape, runs));
}

/** The section as it is drawn: judged, whatever limits it breaks. */
export function asDrawn(need: SectionNeed): DuctOption {
  return priced(need, judged(need, need.section, shapeOf(need.section), 1));
}

/** The same where it is bought: it costs nothing more. */
export function asBought(need: SectionNeed): DuctOption {
  const { ranges: _ranges, standIn: _standIn, ...drawn } = asDrawn(need);
  return { ...drawn, money: 0, labour: 0 };
}

/** Sizes for a duct that is there already: its own for nothing, stocked or not, where it breaks no limit; others whole. */
export function withOwn(need: SectionNeed, options: readonly DuctOption[]): DuctOption[] {
  const own = asBought(need);
  const others = options.filter((o) => o.id !== own.id);
  // One that breaks a limit is only there to see which limit would have to give.
  const listed = options.some((o) => o.id === own.id);
  return own.breaks && !listed ? others : [own, ...others];
}

/** What could stand in its place: no choice, only a way out where nothing fits. */
export const insteadOfBought = (need: SectionNeed): DuctOption[] =>
  allowedOptions(need).map((o) => ({ ...o, breaks: [{ limit: 'bought', value: 2, most: 1 }] }));

type Judged = Omit<DuctOption, 'money' | 'labour'>;

function judged(need: SectionNeed, x: DuctSection, shape: DuctShape, runs: number): Judged {
  const flow = need.flow / runs;
  const breaks = broken(need, shape, runs);
  const { onEdge } = passing(shape, need.section.insulation, need.space);
  const one = shapeId(shape);
  return {
    id: runs === 1 ? one : `${runs} x ${one}`,
    loss: sectionLoss(x, flow, need.air),
    ...(breaks.length > 0 ? { breaks } : {}),
    shape,
    runs,
    velocity: flow / x.area,
    ...(onEdge ? { onEdge } : {}),
  };
}

function priced(need: SectionNeed, option: Judged): DuctOption {
  const { shape, runs } = option;
  const run = {
    shape,
    length: need.section.length,
    perimeter: geometryOf(shape).perimeter,
    bends: bendsAmong(need.fittings ?? []),
    slack: slackIn(need.section),
  };
  const times = (r: Range): Range => ({ low: runs * r.low, likely: runs * r.likely, high: runs * r.high });
  const money = times(moneyOf(run, need.book));
  const labour = times(labourOf(run, need.joints?.[shape.kind]));
  const wide = money.low < money.high || labour.low < labour.high;
  return {
    ...option,
    money: money.likely,
    labour: labour.likely,
    ...(wide ? { ranges: { money, labour } } : {}),
    ...(need.book.entered(shape) ? {} : { standIn: true }),
  };
}

function broken(need: SectionNeed, shape: DuctShape, runs: number): BrokenLimit[] {
  return [
    ...passing(shape, need.section.insulation, need.space).breaks,
    ...over('velocity', need.flow / runs / geometryOf(shape).area, velocityMost(need.limits, need.role, shape.kind)),
    ...over('runs', runs, 1),
  ];
}
