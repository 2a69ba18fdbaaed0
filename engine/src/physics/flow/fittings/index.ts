export { bladeAngle, bladeLosses } from './blade.ts';
export { branchLoss, branchLossOnBranch, straightRunLoss } from './junctions.ts';
export type { FittingKind, FittingShape } from './kinds.ts';
export { fittingLoss } from './kinds.ts';
export { entries, exitLoss, gradualContraction, suddenContraction, suddenExpansion } from './openings.ts';
export type { Looked, LossTable } from './table.ts';
export { lookUp } from './table.ts';
export {
  angleFactor,
  butterfly,
  lossTables,
  mitreByAngle,
  rectangularMitre,
  rectangularSmooth,
  roundMitre,
  roundPieces,
  roundSmooth,
} from './tables.ts';
export {
  type AirTransition,
  narrowingShare,
  type TransitionLoss,
  transitionLoss,
  wideningShare,
} from './transition.ts';
