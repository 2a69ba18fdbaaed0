import type { QuantityKind, Range, TradeId } from '@kneewall/project';
import type { HoldPoint } from './finding.ts';

/** A straight piece, m: so many of it. Where one that is longer than the lengths in the shop is joined, the shopping list knows. */
export type StraightPiece = { readonly name: string; readonly length: number; readonly count: number };

/** A piece of a panel, m: so many of it. `length` runs across what bears it. */
export type PanelPiece = {
  readonly name: string;
  readonly length: number;
  readonly width: number;
  readonly count: number;
};

/** One thing that is needed, before waste and before rounding to what shops sell. `amount` is in the unit of `kind`. */
export type MaterialLine = {
  readonly id: string;
  readonly trade: TradeId;
  readonly what: string;
  readonly kind: QuantityKind;
  readonly amount: number;
  /** Length or count in which it is sold, in the unit of `kind`, where that is known. */
  readonly soldBy?: number;
  /** The document entry it is for. */
  readonly for?: string;
  /** m of each piece that is cut for it from straight lengths; together they are its amount. */
  readonly pieces?: readonly StraightPiece[];
  /** Pieces that are cut for it from sheets `thickness` m thick; together they are its amount. */
  readonly panels?: { readonly thickness: number; readonly pieces: readonly PanelPiece[] };
  /** What it is in the shop, where several lines are the same thing there: they are added up under that id and name. */
  readonly like?: { readonly id: string; readonly what: string };
};

export type Place = 'attic' | 'roof' | 'outside' | 'inside';

/** One piece of work. Every task can be left only at one of its safe stops. */
export type Task = {
  readonly id: string;
  readonly trade: TradeId;
  readonly what: string;
  readonly holdPoint: HoldPoint;
  /** For two handy people, seconds. */
  readonly duration: Range;
  readonly people: number;
  /** Where; left out it is planned as though it was the attic, where most holds people back. */
  readonly place?: Place;
  /** Parts of like length, each ending at a safe stop; `any`: it may be left at any time. Left out: done in one go. */
  readonly parts?: number | 'any';
  /** With what: one tool a line in plain words, those of `tools.ts` where others need it too. */
  readonly tools?: readonly string[];
  readonly after: readonly string[];
  readonly safeStops: readonly string[];
  readonly cautions: readonly string[];
  /** What has to be seen, felt or written down before it counts as done. */
  readonly doneWhen?: readonly string[];
  /** Heard next door: kept out of quiet hours. */
  readonly noisy?: true;
  /** What has to be there while it is done. */
  readonly needs?: readonly ('power' | 'water')[];
  /** No task of that hold point begins before it is done. */
  readonly gates?: HoldPoint;
  /** It takes no window: to be done within so many days of the end of what it comes after. */
  readonly within?: number;
  /** Drying or curing after its end, before what comes after it may begin: s. */
  readonly cures?: number;
};

/** What the card of a task says beside the task itself, by the last word of its id. */
export type Cards = Readonly<Record<string, Pick<Task, 'tools' | 'doneWhen' | 'noisy' | 'needs' | 'cures'>>>;

/** Under which conditions a reading is taken. */
export type Conditions = {
  readonly mode: 'heating' | 'cooling';
  /** °C */
  readonly outdoor: number;
  /** °C */
  readonly indoor: number;
};

/** What a number should be today, how to take it, and how far off is fine. */
export type ExpectedReading = {
  readonly id: string;
  readonly trade: TradeId;
  readonly what: string;
  readonly how: string;
  readonly kind: QuantityKind;
  readonly expected: number;
  readonly good: { readonly min: number; readonly max: number };
  readonly caution?: string;
};
