import type { QuantityKind, Range, TradeId } from '@kneewall/project';
import type { Because } from './outcome.ts';

export const statusWords = ['ok', 'tight', 'fails', 'unknown'] as const;
export type Status = (typeof statusWords)[number];

/** Worst first: harm sorts before everything else. */
export const consequenceWords = ['harm', 'damage', 'money', 'comfort'] as const;
export type Consequence = (typeof consequenceWords)[number];

/** In the order in which the job meets them. `season` recurs. */
export const holdPointWords = ['decide', 'order', 'lift', 'cut', 'connect', 'close', 'start', 'season'] as const;
export type HoldPoint = (typeof holdPointWords)[number];

export type Limit = { readonly min?: number; readonly max?: number };

/**
 * One checked statement. `value` and `limit` are in the unit of `kind`. `margin` is signed: positive passes.
 * `working` names an entry of the plan's workings whose last value is the finding's likely value, to the bit.
 */
export type Finding = {
  readonly id: string;
  readonly trade: TradeId;
  readonly subject: string;
  readonly item?: string;
  readonly holdPoint: HoldPoint;
  readonly status: Status;
  readonly because?: Because;
  /** What would make an unknown known: document paths, or keys of jobs. */
  readonly needs?: readonly string[];
  readonly consequence: Consequence;
  readonly value?: number | Range;
  readonly limit?: Limit;
  readonly margin?: number;
  readonly unit?: string;
  readonly kind?: QuantityKind;
  readonly what: string;
  readonly why: string;
  readonly mend: string;
  readonly caution?: string;
  readonly source: string;
  readonly working: string;
};
