import type { Range } from '@kneewall/project';
import type { PanelPiece } from '../plan/lines.ts';
import type { Outcome } from '../plan/outcome.ts';
import type { ResultBase } from '../plan/resultBase.ts';
import type { Pose } from './kernels/boxes.ts';
import type { AskedWay } from './motion/asked.ts';
import type { Planned } from './motion/planned.ts';
import type { PassageKind } from './passageKind.ts';

export type PieceId = 'handler' | 'handlerCrated' | 'handlerPart' | 'outdoorUnit';

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
  /** What motion planning is asked, and what it found: `pending` until its job is done. */
  readonly asked: Outcome<AskedWay>;
  readonly planned: Outcome<Planned>;
  /** m by which tape and data sheet may take from the spare that was found. */
  readonly doubt: number;
};

export type Up = 'rope' | 'hands' | 'ladder' | 'stair';
/** N on the rope's end and on what the tackle hangs from, and degrees by which that leans aside. */
export type Hoisted = { readonly mass: number; readonly pull: Range; readonly anchor: number; readonly leans?: number };

export type OutdoorUp = 'ground' | 'ramp' | 'rope' | 'hands';
/** The outdoor unit on its way up: N at the rope's end and on its anchor, degrees of the way, N that it slides back with. */
export type Raised = Hoisted & { readonly slope: number; readonly back: Range };

/** Who carries how much where the equation says nothing: kg on the lower one of a stair, kg on the ladder. */
export type Steps = { readonly below?: number; readonly ladder?: number };

/** Minutes of each hour of a month's day that may be worked, with the attic's °C and the index's. */
export type MonthHours = {
  readonly attic: readonly number[];
  readonly index: readonly number[];
  readonly minutes: readonly number[];
};

/**
 * A planned window: s after midnight, sun time; s of work that its hours allow, the least minutes in one of them, L to
 * drink for one person, and the start that would leave most.
 */
export type PlannedHours = {
  readonly day: string;
  readonly month: number;
  readonly from: number;
  readonly until: number;
  readonly work: number;
  readonly leastMinutes: number;
  readonly drink: number;
  readonly best: number;
  readonly bestWork: number;
};

/** Which hours can be worked in the attic: of each month, and of each planned window. */
export type HeatHours = {
  readonly months: readonly MonthHours[];
  readonly planned: readonly { readonly id: string; readonly of: Outcome<PlannedHours> }[];
};

/** One joist under the unit: share of its strength that is used, m of sag. */
export type Loaded = {
  readonly used: Range;
  readonly sag: Range;
  readonly span: number;
  /** The same of the timbers laid across, where there are any. */
  readonly across?: Range;
};

/** Share of the blower's shaking that comes through its pads, at its speeds. */
export type Mounted = { readonly through: Range; readonly own: number };

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

/** Timber that is cut, m: so many of a size, and what for. */
export type Member = {
  readonly size: '2x4' | '2x6' | '2x10';
  readonly name: string;
  readonly length: number;
  readonly count: number;
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
  readonly members: Outcome<readonly Member[]>;
  /** Panels of the platform and the floor to it, `thickness` m thick; none where boards do. */
  readonly panels: Outcome<{ readonly thickness: number; readonly pieces: readonly PanelPiece[] }>;
  /** Timber of the ramp for the outdoor unit; none where it goes up another way. */
  readonly ramp: Outcome<readonly Member[]>;
  readonly heat: Outcome<Working>;
  /** Pending until the house's year is known. */
  readonly heatHours: Outcome<HeatHours>;
  readonly steps: Outcome<Steps>;
  readonly outdoorUp: OutdoorUp;
  readonly raised: Outcome<Raised>;
  readonly mounted: Outcome<Mounted>;
  /** Minutes [12][24] that hours of a hot day of each month leave for work in the attic, solar time. */
  readonly hotDay: Outcome<readonly (readonly number[])[]>;
};
