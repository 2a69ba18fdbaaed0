/**
 * Cutting: bars, sheets, coils, and flat pieces that are folded. m everywhere, compared to a nanometre. Everything is plain
 * data; bad input comes back as `problems`, and nothing throws. Counts end every search, so that equal jobs give equal plans.
 */

export type { BarJob, BarPiece, BarStock } from './bars/barJob.ts';
export { type BarPlan, cutBars } from './bars/cutBars.ts';
export type { CutBar } from './bars/layBars.ts';
export type { CoilJob, CoilPlan } from './coils/coilJob.ts';
export { cutCoils } from './coils/cutCoils.ts';
export { flexibleNeeded } from './coils/flexibleNeeded.ts';
export {
  type Board,
  type BoardForm,
  boardOf,
  boards,
  foldDepth,
  halfPerimeterMost,
  pieceLength,
  stretchOut,
} from './fold/board.ts';
export type { BoardBox, Cap, Opening, Side } from './fold/boardBox.ts';
export { type UnfoldedBox, unfoldBox } from './fold/box.ts';
export { type LyingPiece, onSheet } from './fold/onSheet.ts';
export { holesOfCap, wrongHoles } from './fold/openings.ts';
export {
  areaOf as areaOfFlat,
  type FlatHole,
  type FlatLine,
  type FlatMeasure,
  type FlatPanel,
  type FlatPiece,
  type Spot,
} from './fold/pattern.ts';
export { type Bend, bendAllowance, bendDeduction, steelPerArea } from './metal/bend.ts';
export { type MetalCap, metalCap } from './metal/cap.ts';
export { type Cone, type ConeArcs, coneArcs, unfoldCone } from './metal/cone.ts';
export {
  type FlatTransition,
  type Place,
  type Transition,
  type TransitionEnd,
  unfoldTransition,
} from './metal/transition.ts';
export { type FlatMetal, type MetalWrap, unfoldWrap } from './metal/wrap.ts';
export { cylinderBlank, roundWrap, roundWrapPublished } from './metal/wraps.ts';
export type { CutProblem } from './problem.ts';
export { bestOfSheet } from './sheets/bestOfSheet.ts';
export type { Rect, ThroughCut } from './sheets/layout.ts';
export { packSheets } from './sheets/packSheets.ts';
export type { CutSheet, SheetJob, SheetPiece, SheetPlan, SheetStock } from './sheets/sheetJob.ts';
export { cuttingSources } from './sources.ts';
export { type BoardTransition, boardTransition } from './transition/boardTransition.ts';
export { type MetalTransition, metalTransition, type TransitionPieces } from './transition/metalPieces.ts';
