import type { Range } from '@kneewall/project';
import type { Outcome } from '../plan/outcome.ts';
import type { ResultBase } from '../plan/resultBase.ts';
import type { Inside } from './inside/insideWay.ts';
import type { Flammable } from './kernels/roomRule.ts';

/** Something on a wall, m from its left end and above the ground. */
export type Thing = {
  readonly kind: 'window' | 'bedroom' | 'door' | 'other';
  readonly x: number;
  readonly z: number;
  readonly width: number;
  readonly height: number;
};

/** Something on the ground before a wall, m from the wall's left end and out from it. */
export type GroundThing = {
  readonly kind: 'walk' | 'step' | 'soft' | 'other';
  readonly x: number;
  readonly out: number;
  readonly width: number;
  readonly depth: number;
};

/** m from a wall's left end, out from the wall, and above the ground. */
export type Ear = { readonly x: number; readonly out: number; readonly z: number };

/** The ground before a wall: how far out a unit may stand (0: nowhere), what lies on it, and who lives beyond. */
export type Ground = {
  readonly depth: number;
  readonly things: readonly GroundThing[];
  readonly line?: number;
  readonly lineLeast?: number;
  readonly neighbour?: Ear;
  readonly fence?: { readonly out: number; readonly top: number };
  readonly mirror?: number;
};

/** A wall in plain numbers; `out` is where the line comes out, `inside` the line up to there. m. */
export type Wall = {
  readonly id: string;
  readonly name: string;
  readonly width: number;
  readonly height: number;
  readonly out: { readonly x: number; readonly z: number };
  readonly inside: number;
  readonly things: readonly Thing[];
  readonly ground: Ground;
};

/** A length that is sold. */
export type Stock = { readonly id: string; readonly length: number };

/** The outdoor unit, m, what it must have free, and where people can get it to and look after it. */
export type UnitBox = {
  readonly width: number;
  readonly height: number;
  readonly depth: number;
  readonly beside: number;
  readonly above: number;
  /** m above the ground, at the least, and at the most that it can be lifted to. */
  readonly baseLeast: number;
  readonly liftMost: number;
  /** m of firm ground before it. */
  readonly footing: number;
};

/** Where a unit hangs or stands: its lower left corner; `out` its back from the wall, on the ground alone. m. */
export type Place = {
  readonly stands: 'wall' | 'ground';
  readonly x: number;
  readonly z: number;
  readonly out: number;
};

/** What keeps a unit from a place; `yes` where nothing does. */
export type Fits = 'yes' | 'off-wall' | 'covers' | 'too-near' | 'too-high' | 'no-footing' | 'ice' | 'line';

/** Cells of a row that one stock length reaches: `from` up to, not with, `to`, in cells; `stock` counts from the shortest. */
export type Reached = { readonly from: number; readonly to: number; readonly stock: number };

/**
 * Where the unit's lower left corner may lie, by the shortest length that reaches; row 0 at the ground. On the ground the
 * unit's back left corner, row 0 at the wall.
 */
export type ReachMap = {
  readonly wall: string;
  readonly stands: 'wall' | 'ground';
  readonly cell: number;
  readonly columns: number;
  readonly rows: readonly (readonly Reached[])[];
  /** The lowest place that the shortest set reaches, and the length it takes, m; none where nothing does. */
  readonly best?: { readonly x: number; readonly z: number; readonly stock: number; readonly needed: number };
};

/** dB(A) of the unit: at the loudest bedroom window of its own wall, at the property line, at the neighbour's window. */
export type Sounds = { readonly bedroom?: number; readonly line?: number; readonly neighbour?: number };

/** A corner of the line outside: m from the wall's left end, and above the ground; below 0 out from the wall. */
export type WayPoint = readonly [number, number];

/** The place meant: m of line it takes, where a way leads there, and what is wrong with it as a place. */
export type Spot = Sounds & {
  readonly needed?: Range;
  readonly fits: Fits;
  /** The line outside, from where it comes out to the unit's pipes. */
  readonly way: readonly WayPoint[];
};

/** A place worth choosing: which set, what it leaves, how loud, how high. */
export type GoodPlace = Place &
  Sounds & { readonly wall: string; readonly stock: number; readonly needed: number; readonly spare: number };

/** What is left of the set as a flat loop: m of line, turns, m across over all; 0 turns where it only makes a bow. */
export type Loop = { readonly length: number; readonly turns: number; readonly across: number };

/** What a place anywhere is asked with: m of spare to have in hand, dB of sound power where it is known. */
export type Asked = {
  readonly unit: UnitBox;
  readonly stock: readonly Stock[];
  readonly slack: number;
  readonly power?: number;
};

/** What a place would mean: m of line, the shortest set that reaches (counted from the shortest), what is wrong with it. */
export type Answer = Sounds & {
  readonly fits: Fits;
  readonly way: readonly WayPoint[];
  readonly needed?: number;
  readonly stock?: number;
  readonly spare?: number;
  /** m that its base lies too low for the snow; 0 where it does not. */
  readonly inSnow: number;
};

export type LinesetResult = ResultBase & {
  readonly stock: readonly Stock[];
  readonly walls: Outcome<readonly Wall[]>;
  readonly asked: Outcome<Asked>;
  readonly maps: Outcome<readonly ReachMap[]>;
  /** Places worth choosing, the best first. */
  readonly places: Outcome<readonly GoodPlace[]>;
  readonly spot: Outcome<Spot>;
  /** The way inside by wall; only to walls that are drawn. */
  readonly insides: readonly { readonly wall: string; readonly way: Outcome<Inside> }[];
  /** m of line between the units, slack counted; from the place on a wall, or as entered. */
  readonly needed: Outcome<Range>;
  /** m of each straight stretch of channel along the wall, and of one length of it; none where clips hold the line. */
  readonly channel?: Outcome<{ readonly legs: readonly number[]; readonly sold: number }>;
  /** The shortest stock length that reaches, m. */
  readonly set: Outcome<Stock>;
  /** What is left over of it, as it should lie. */
  readonly loop: Outcome<Loop>;
  /** Whether its couplings can be joined once only. */
  readonly once: boolean;
  /** m the base has to lie above the ground for the snow. */
  readonly baseLeast: Outcome<number>;
  /** kg to add, and kg in all, with the length of the set. */
  readonly added: Outcome<number>;
  readonly charge: Outcome<number>;
  /** kg that pull at each upper bolt of a bracket in the strongest gust, with ice. */
  readonly boltPull: Outcome<number>;
  /** m of the panel behind the bracket; none where there is none. */
  readonly backing?: Outcome<{ readonly width: number; readonly height: number }>;
  /** A refrigerant that burns; none for others. */
  readonly flammable?: Flammable;
};
