import type { ConeArcs, CutProblem, Transition } from '../../../physics/cutting/index.ts';

/** Ends of a metal duct, so many, that are closed by caps from the shop; m inside. */
export type BoughtCap = {
  readonly section: string;
  readonly name: string;
  readonly size: { readonly diameter: number } | { readonly width: number; readonly height: number };
  readonly count: number;
};

/** A cap over the end of a round duct, or a reducer between two ducts, that is cut from sheet metal; m inside. */
export type CutMade = {
  readonly id: string;
  readonly name: string;
  /** The duct it belongs to, and its side. */
  readonly section: string;
  readonly side: 'supply' | 'return';
} & (
  | { readonly what: 'cap'; readonly diameter: number }
  | ({
      readonly what: 'reducer';
      readonly length: number;
      readonly lengthWanted: number;
      readonly lengthFrom: 'entered' | 'slopes';
    } & Pick<Transition, 'start' | 'end' | 'offset'>)
  | { readonly what: 'unknown'; readonly missing: string }
);

/** The same with what is wrong with it, and how a cone is marked out. */
export type FlatMade = CutMade & { readonly problems: readonly CutProblem[]; readonly arcs?: ConeArcs };
