import type { QuantityKind, Range, TradeId } from '@kneewall/project';
import type { HoldPoint, Status } from '../plan/finding.ts';
import type { MaterialLine } from '../plan/lines.ts';
import type { Outcome } from '../plan/outcome.ts';
import type { ResultBase } from '../plan/resultBase.ts';
import type { BoughtCap } from './cutting/made/result.ts';
import type { CutAnswers, HandSheet } from './cutting/result.ts';
import type { PanelPlan } from './panels/result.ts';
import type { StraightPlan, TooLong } from './straight/result.ts';

export type Shop = 'merchant' | 'heating' | 'electrical' | 'dealer';

/** Parts of the job that a quote may leave out; removal, permit and labour are no materials and never in here. */
export const scopes = ['unit', 'ducts', 'electrical', 'drain', 'lineset', 'access', 'tools'] as const;
export type Scope = (typeof scopes)[number];

/** What one of it is in the shop; `measure`: cut or made to what is asked for. */
export type SoldAs = 'piece' | 'box' | 'roll' | 'tub' | 'bag' | 'length' | 'sheet' | 'reel' | 'measure';

/** Inner sizes as the name that the air trade gives its ducts: `flexible 203`. */
type DuctName = string;

/** Something at hand, as it was entered. */
export type Stock = {
  readonly path: string;
  readonly name: string;
  readonly amount?: string;
  readonly line?: string;
  readonly duct?: DuctName;
  /** m of one piece. */
  readonly each?: number;
  /** A sheet that the cut plan lays out. */
  readonly sheet?: true;
};

/** A price as it was entered: for one pack, whose size is `piece` (m) or stands in `unit`. */
export type PriceEntry = {
  readonly path: string;
  readonly name: string;
  readonly unit?: string;
  readonly piece?: number;
  readonly price: Range;
  readonly line?: string;
  readonly duct?: DuctName;
  readonly part: 'run' | 'end' | 'bend';
  readonly shop?: Shop;
};

/** Something ordered, arrived or fitted. */
export type Order = {
  readonly path: string;
  readonly name: string;
  readonly state: 'ordered' | 'arrived' | 'fitted';
  readonly of?: string;
  readonly line?: string;
  readonly amount?: string;
};

/** A boat or lorry: days as they stand in the calendar, and days counted from 1970. */
export type Delivery = {
  readonly id: string;
  readonly name: string;
  readonly arrives: Outcome<number>;
  /** The last day on which an order still comes with it. */
  readonly orderBy: Outcome<number>;
  /** Time of the day from which it counts as there, s. */
  readonly at: number;
  /** Things it is said to bring, as they were entered; empty: all from its shop that no other delivery names. */
  readonly goods: readonly string[];
  /** How much of a thing it is said to bring, as it was entered. */
  readonly amounts: readonly { readonly path: string; readonly good: string; readonly amount: string }[];
  readonly brings: Shop | 'all';
};

/** All of the document that a list is made with. */
export type Own = {
  readonly stock: readonly Stock[];
  readonly prices: readonly PriceEntry[];
  readonly orders: readonly Order[];
  readonly deliveries: readonly Delivery[];
  /** The last day that work may end on, or of the last window. */
  readonly doneBy?: number;
  /** What a document entry costs by itself, by its path. */
  readonly costs: Readonly<Record<string, Range>>;
  /** m that a saw cut takes. */
  readonly saw: number;
  /** Panels to cut from, with their sizes. */
  readonly panels: readonly HandSheet[];
  /** Closed ends of new metal duct whose caps are bought. */
  readonly caps: readonly BoughtCap[];
};

/** A line of a trade that a line of the list holds; `amount` is what it needs. */
export type Source = {
  readonly id: string;
  readonly trade: TradeId;
  readonly what: string;
  readonly amount: number;
  readonly for?: string;
};

/** How a line stands against what was ordered. `new`: others of its shop were ordered, it is not on the order. */
export type Since = 'as-ordered' | 'more' | 'less' | 'new' | 'open';

/** The price that a line is costed with, and how it was found to be its price. */
export type PriceUsed = { readonly path: string; readonly name: string; readonly each: Range; readonly holds: number };

/** One thing to buy. Amounts are in the unit of `kind`. */
export type ListLine = {
  readonly id: string;
  readonly what: string;
  readonly kind: QuantityKind;
  readonly from: readonly Source[];
  readonly shop: Shop;
  /** The hold point before which it must be there. */
  readonly by: HoldPoint;
  readonly scope: Scope;
  /** What the trades need; what is allowed for waste; the share of the need where that is one. */
  readonly need: number;
  readonly waste: number;
  readonly wasteShare: number;
  readonly atHand: number;
  readonly ordered: number;
  readonly as: SoldAs;
  /** How much one piece is; 0 where it is sold by measure. */
  readonly piece: number;
  /** Whole pieces beyond what is at hand, and how much they are; of them what is not ordered yet. */
  readonly pieces: number;
  readonly bought: number;
  readonly open: number;
  readonly openPieces: number;
  /** What is left when need and waste are used up. */
  readonly left: number;
  readonly since: Since;
  readonly price?: PriceUsed;
  /** Of all pieces beyond what is at hand, and of those not ordered yet. */
  readonly cost?: Range;
  readonly openCost?: Range;
};

/** What the hands need, from the tasks. */
export type Tool = {
  readonly id: string;
  readonly what: string;
  readonly tasks: readonly string[];
  readonly by: HoldPoint;
  readonly atHand: boolean;
};

/** Money of a part of the job, and how many things of it have no price. */
export type CostOf = Range & { readonly priced: number; readonly unpriced: number };
export type Cost = CostOf & { readonly scopes: Readonly<Record<Scope, CostOf>>; readonly open: CostOf };

/** What is easily forgotten: not on the list of any trade, and asked for by what is on it. */
export type Forgotten = { readonly id: string; readonly atHand: boolean; readonly because: readonly string[] };

/** Something entered that could not be used, and why. */
export type Unused = {
  readonly path: string;
  readonly name: string;
  readonly because: 'amount' | 'unit' | 'line' | 'several' | 'no-amount' | 'thickness' | 'goods';
};

export type ShoppingList = {
  readonly lines: readonly ListLine[];
  readonly usedUp: readonly MaterialLine[];
  /** Pipe, conduit, channel and timber, piece by piece from lengths. */
  readonly straight: readonly StraightPlan[];
  /** Plywood, piece by piece from its sheets. */
  readonly panels: readonly PanelPlan[];
  /** Pieces that must be in one length, and that no length sold holds. */
  readonly tooLong: readonly TooLong[];
  readonly tools: readonly Tool[];
  readonly forgotten: readonly Forgotten[];
  readonly cost: Cost;
  /** Ordered and no longer on the list. */
  readonly gone: readonly Order[];
  readonly unused: readonly Unused[];
  /** Findings at hold points up to `order` that do not hold, by id. */
  readonly beforeOrder: readonly { readonly id: string; readonly status: Status }[];
};

export type MaterialsResult = ResultBase & {
  readonly own: Own;
  readonly list: Outcome<ShoppingList>;
  /** Every piece of duct flat, and how they lie on sheets, lengths and bags; pending until its job is done. */
  readonly cut: Outcome<CutAnswers>;
};
