import type {
  BarPlan,
  BoardBox,
  BoardForm,
  CoilJob,
  CoilPlan,
  CutProblem,
  FlatPiece,
  Opening,
  SheetPlan,
  UnfoldedBox,
} from '../../physics/cutting/index.ts';
import type { FlatJoint, UnitJoint } from './joint/result.ts';
import type { CutMade, FlatMade } from './made/result.ts';

/**
 * A hole of a box: what leaves there, how its side was found (in turn: left and right, where nothing is entered or drawn), and
 * how its place along. `short`: nearer to the unit than its outlet's clear stretch.
 */
export type BoxHole = {
  readonly id: string;
  readonly name: string;
  readonly side: 'entered' | 'drawn' | 'in-turn';
  readonly place: 'entered' | 'worked-out';
  readonly short: boolean;
};

/** A duct of board as the document has it, m; sizes inside. */
export type CutBox = {
  readonly id: string;
  readonly name: string;
  readonly side: 'supply' | 'return';
  readonly box: Omit<BoardBox, 'form' | 'sheet'>;
  readonly holes: readonly BoxHole[];
  readonly thicknessFrom: 'entered' | 'insulation';
  /** Why its far end is open, where it is. */
  readonly open?: 'entered' | 'goes-on' | 'register';
  /** Take-offs for which no side has room. */
  readonly unplaced: readonly { readonly id: string; readonly name: string }[];
};

/** A straight duct of sheet metal, m; sizes inside, with a hole for all that leaves it. */
export type CutDuct = {
  readonly id: string;
  readonly name: string;
  readonly width: number;
  readonly height: number;
  readonly length: number;
  readonly openings: readonly Opening[];
  readonly holes: readonly BoxHole[];
  readonly unplaced: CutBox['unplaced'];
  /** Ends that get a cap cut from sheet metal. */
  readonly caps: { readonly start: boolean; readonly end: boolean };
};

/** A sheet at hand, m: so many of it. `thickness` where it is entered. */
export type HandSheet = {
  readonly id: string;
  readonly name: string;
  readonly width: number;
  readonly length: number;
  readonly thickness?: number;
  readonly count: number;
};

/** A length at hand, m: so many of it. */
export type HandLength = {
  readonly id: string;
  readonly name: string;
  readonly length: number;
  readonly count: number;
};

export type CutRun = { readonly id: string; readonly name: string; readonly length: number };

/** Everything that pieces are made from. m. */
export type CutInputs = {
  readonly boxes: readonly CutBox[];
  readonly ducts: readonly CutDuct[];
  /** How the ducts join the unit. */
  readonly joints: readonly UnitJoint[];
  /** Caps of round ducts and reducers that are cut. */
  readonly made: readonly CutMade[];
  readonly board: {
    readonly width: number;
    readonly length: number;
    readonly turns: boolean;
    readonly kerf: number;
    readonly keep: number;
    readonly form: BoardForm | 'fewest';
    readonly atHand: readonly HandSheet[];
  };
  readonly metal: {
    readonly thickness: number;
    readonly width: number;
    readonly length: number;
    readonly lap: number;
    readonly kerf: number;
    readonly atHand: readonly HandSheet[];
  };
  /** Round metal duct by its diameter: the runs, the lengths in which it is sold, and what is at hand. */
  readonly pipes: readonly {
    readonly diameter: number;
    readonly stock: number;
    readonly runs: readonly CutRun[];
    readonly atHand: readonly HandLength[];
  }[];
  /** Flexible duct by its diameter; a run's length is what is cut for it. */
  readonly bags: readonly {
    readonly diameter: number;
    readonly coil: number;
    readonly runs: readonly CutRun[];
    readonly atHand: readonly HandLength[];
  }[];
  readonly sleeve: number;
  readonly splices: CoilJob['rule'];
  readonly splicesMost: number;
};

/** A box with its flat pieces; `wayOut`: a form whose pieces fit the sheet where the one asked for does not. */
export type FlatBox = CutBox & { readonly flat: UnfoldedBox; readonly wayOut?: BoardForm };

/** Sheets of one kind and thickness, with what is laid on them. */
export type SheetsOf = {
  readonly of: 'board' | 'metal' | 'panel';
  readonly thickness: number;
  readonly pieces: readonly (FlatPiece & { readonly for: string })[];
  readonly plan: SheetPlan;
};

export type CutAnswers = {
  readonly boxes: readonly FlatBox[];
  /** Straight metal ducts: how many pieces, each so long; or what is wrong. */
  readonly ducts: readonly (CutDuct & {
    readonly pieces: number;
    readonly each: number;
    readonly problems: readonly CutProblem[];
  })[];
  readonly joints: readonly FlatJoint[];
  readonly made: readonly FlatMade[];
  readonly sheets: readonly SheetsOf[];
  readonly pipes: readonly { readonly diameter: number; readonly stock: number; readonly plan: BarPlan }[];
  readonly bags: readonly { readonly diameter: number; readonly coil: number; readonly plan: CoilPlan }[];
  /** Sheets at hand that no thickness says where to use. */
  readonly unsure: readonly HandSheet[];
  /** Names of the document's entries, by id; of what is at hand by `hand` and its id. */
  readonly names: Readonly<Record<string, string>>;
};
