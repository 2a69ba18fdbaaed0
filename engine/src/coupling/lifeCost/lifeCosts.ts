import type { Range } from '@kneewall/project';
import type { Spread } from '../../plan/scenario.ts';

/** What a life costs, by kind; `incentive` is taken off. Money, today's worth. */
export const lifeParts = [
  'purchase',
  'incentive',
  'fuel',
  'wear',
  'electricity',
  'backup',
  'otherHeat',
  'upkeep',
] as const;
export type LifePart = (typeof lifeParts)[number];

/** What a unit takes in a year: kWh bought for it, the part of them that is resistance heat, litres, hours of the generator, kWh of the stove. */
export type UnitTakes = {
  readonly energy: number;
  readonly backup: number;
  readonly litres: number;
  readonly hours: number;
  readonly stove: number;
};

/** One candidate over its life. */
export type UnitLife = {
  readonly id: string;
  readonly name: string;
  readonly chosen: boolean;
  /** Why it is no match for the others, whatever it costs: it does not hold the house, or the inverter does not start it. */
  readonly unfit?: 'cold' | 'start';
  readonly takes: UnitTakes;
  /** Likely values; they sum to the likely total. */
  readonly parts: Readonly<Record<LifePart, number>>;
  readonly total: Spread;
  /** Money beyond the cheapest that fits, everything both share moved together; the cheapest has 0. */
  readonly beyond: Range;
  /** Whether it is dearer at every end of what is not known: else nobody can tell the two apart. */
  readonly apart: boolean;
};

/** All candidates whose cost can be worked out, cheapest first, and why the others cannot. */
export type LifeCosts = {
  readonly power: 'own' | 'grid';
  readonly years: Range;
  readonly interest: Range;
  readonly units: readonly UnitLife[];
  readonly left: readonly { readonly id: string; readonly name: string; readonly paths: readonly string[] }[];
  /** What is not counted because nobody entered it. */
  readonly uncounted: readonly ('generator-wear' | 'other-heat')[];
};

/** Money over a life as it is told: in hundreds, since nothing of it is known closer. */
export const inHundreds = (money: number): number => 100 * Math.round(money / 100) + 0;
