import type { Range } from '@kneewall/project';
import type { Outcome } from '../plan/outcome.ts';
import type { ResultBase } from '../plan/trade.ts';
import type { Flammable } from './kernels/roomRule.ts';

/** Something on a wall, m from its left end and above the ground. */
export type Thing = {
  readonly kind: 'window' | 'bedroom' | 'door' | 'other';
  readonly x: number;
  readonly z: number;
  readonly width: number;
  readonly height: number;
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
};

/** A length that is sold. */
export type Stock = { readonly id: string; readonly length: number };

/** The outdoor unit as it stands on a wall, m, and what it must have free. */
export type UnitBox = {
  readonly width: number;
  readonly height: number;
  readonly beside: number;
  readonly above: number;
  /** m above the ground, at the least. */
  readonly baseLeast: number;
};

/** Cells of a row that one stock length reaches: `from` up to, not with, `to`, in cells; `stock` counts from the shortest. */
export type Reached = { readonly from: number; readonly to: number; readonly stock: number };

/** Where on a wall the unit's lower left corner may lie, by the shortest length that reaches; row 0 at the ground. */
export type ReachMap = {
  readonly wall: string;
  readonly cell: number;
  readonly columns: number;
  readonly rows: readonly (readonly Reached[])[];
  /** The lowest place that the shortest set reaches, and the length it takes, m; none where nothing does. */
  readonly best?: { readonly x: number; readonly z: number; readonly stock: number; readonly needed: number };
};

/** The place meant: m of line it takes, where a way leads there, and what is wrong with it as a place. */
export type Spot = {
  readonly needed?: Range;
  readonly fits: 'yes' | 'off-wall' | 'covers' | 'too-near';
  /** dB(A) at the nearest window that somebody sleeps behind; none where there is none or the unit's sound is not known. */
  readonly bedroom?: number;
};

export type LinesetResult = ResultBase & {
  readonly stock: readonly Stock[];
  readonly maps: Outcome<readonly ReachMap[]>;
  readonly spot: Outcome<Spot>;
  /** m of line between the units, slack counted; from the place on a wall, or as entered. */
  readonly needed: Outcome<Range>;
  /** The shortest stock length that reaches, m. */
  readonly set: Outcome<Stock>;
  /** m the base has to lie above the ground for the snow. */
  readonly baseLeast: Outcome<number>;
  /** kg to add, and kg in all, with the length of the set. */
  readonly added: Outcome<number>;
  readonly charge: Outcome<number>;
  /** kg that pull at each upper bolt of a bracket in the strongest gust, with ice. */
  readonly boltPull: Outcome<number>;
  /** A refrigerant that burns; none for others. */
  readonly flammable?: Flammable;
};
