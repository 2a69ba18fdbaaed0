import type { CutProblem, Transition } from '../../../physics/cutting/index.ts';

/** The piece between an opening of the unit and the duct there, m inside, from the unit outward; right and up as seen from it. */
export type CutTransition = Pick<Transition, 'id' | 'start' | 'end' | 'length' | 'offset'> & {
  readonly of: 'board' | 'metal';
  readonly thickness: number;
  /** As long as its slopes want it. */
  readonly lengthWanted: number;
  readonly lengthFrom: 'entered' | 'slopes';
};

type Opening = { readonly width: number; readonly height: number };

/** How ducts join the unit: one straight, one by a piece, several by a box, or not known because its opening is not entered. */
export type UnitJoint = {
  readonly side: 'supply' | 'return';
  /** The duct there, the first of several, and the name or names. */
  readonly section: string;
  readonly name: string;
} & (
  | { readonly state: 'unknown'; readonly missing: string }
  | { readonly state: 'straight'; readonly opening: Opening }
  | {
      readonly state: 'shared';
      readonly opening: Opening;
      readonly length: number;
      readonly ducts: number;
      readonly of: 'board' | 'metal';
    }
  | { readonly state: 'piece'; readonly opening: Opening; readonly piece: CutTransition }
);

/** A joint with what is wrong with its piece. */
export type FlatJoint = UnitJoint & { readonly problems: readonly CutProblem[] };
