import type { Range } from '@kneewall/project';
import type { Outcome } from '../plan/outcome.ts';
import type { ResultBase } from '../plan/trade.ts';
import type { Pose } from './kernels/boxes.ts';

export type PieceId = 'handler' | 'handlerCrated' | 'outdoorUnit';
export type PassageKind = 'hatch' | 'door' | 'stair' | 'crawl';

/** How a piece meets a passage. m. */
export type Passing = {
  /** Left over in its best pose, over what tape and data sheet leave open; below 0 where it does not go. */
  readonly spare: Range;
  readonly pose: Pose;
  readonly opening: readonly [number, number];
  /** No motion whatever takes it through; where this is false and it does not pass, turning on the way is not ruled out. */
  readonly never: boolean;
  /** The smallest opening that would do, square, with room for hands and a crooked frame. */
  readonly smallest: readonly [number, number];
  /** Of a hatch: free height that is surely enough to bring it up and lay it down, and below which it cannot lie there. */
  readonly height?: { readonly enough: number; readonly least: number };
};

/** One piece of one unit at one passage. */
export type Way = {
  readonly candidate: string;
  readonly unit: string;
  readonly piece: PieceId;
  readonly passage: string;
  readonly name: string;
  readonly kind: PassageKind;
  readonly passing: Outcome<Passing>;
};

export type Up = 'rope' | 'hands' | 'ladder' | 'stair';
/** N on the rope's end and on what the tackle hangs from. */
export type Hoisted = { readonly mass: number; readonly pull: Range; readonly anchor: number };

/** One joist under the unit: share of its strength that is used, m of sag. */
export type Loaded = { readonly used: Range; readonly sag: Range; readonly span: number };

/** The attic while people work in it: °C, and minutes of an hour that may be worked. */
export type Working = {
  readonly attic: number;
  readonly globe: number;
  readonly wet: number;
  readonly index: number;
  readonly minutes: number;
  /** Minutes by effort, at the same index. */
  readonly byEffort: Readonly<Record<'light' | 'moderate' | 'heavy', number>>;
};

export type AccessResult = ResultBase & {
  /** The unit the plan is made for. */
  readonly chosen: Outcome<string>;
  readonly ways: Outcome<readonly Way[]>;
  readonly up: Up;
  readonly people: Outcome<number>;
  readonly carried: readonly { readonly piece: PieceId; readonly mass: Outcome<number> }[];
  /** kg that those who carry may lift together. */
  readonly mayLift: Outcome<number>;
  readonly hoisted: Outcome<Hoisted>;
  readonly platform: Outcome<Loaded>;
  readonly heat: Outcome<Working>;
  /** Minutes [12][24] that hours of a hot day of each month leave for work in the attic, solar time. */
  readonly hotDay: Outcome<readonly (readonly number[])[]>;
};
